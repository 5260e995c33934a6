import { defineConfig } from 'vitest/config';

// Relative base: the build folder runs unchanged from any static host and any sub-path.
export default defineConfig({
  base: './',
  // Vite reads jsxImportSource from tsconfig only for files its include covers; say it here so no React JSX can slip in.
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: { outDir: 'build/site', emptyOutDir: true, target: 'es2022', modulePreload: { polyfill: false } },
  server: { host: '127.0.0.1' },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**'],
  },
});
