import { defineConfig } from 'vitest/config';

// The built site in a real Chromium, one page after the other: two pages at once would fight for the machine's two cores.
export default defineConfig({
  test: {
    root: '.',
    environment: 'node',
    include: ['tests/browser/**/*.test.ts'],
    globalSetup: ['tests/browser/serve-site.mjs'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
