import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import mdx from '@mdx-js/rollup';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkMdxFrontmatter from 'remark-mdx-frontmatter';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { factUsesPlugin } from './src/cli/fact-uses.ts';
import { formulaModule } from './src/cli/formula-mathml.mjs';
import { lessonParts } from './src/cli/lesson-parts.mjs';
import { offlineSite } from './src/cli/offline-site.ts';
import { stillLessons } from './src/cli/still-lessons.ts';
import { formulaTexts } from './src/workings/formula-texts.ts';

/** Writes which modules each chunk holds, for the size budget: build/chunks.json, beside the site and not in it. */
const chunkList = (): Plugin => ({
  name: 'chunk-list',
  apply: (config, { command }) => command === 'build' && !config.build?.ssr,
  generateBundle(_options, bundle) {
    const chunks = Object.values(bundle).flatMap((output) =>
      output.type === 'chunk'
        ? [
            {
              file: output.fileName,
              entry: output.isEntry,
              imports: output.imports,
              dynamicImports: output.dynamicImports,
              modules: Object.keys(output.modules).map((id) => relative(import.meta.dirname, id)),
            },
          ]
        : [],
    );
    const folder = join(import.meta.dirname, 'build');
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'chunks.json'), JSON.stringify(chunks));
    // Whoever checks for staleness writes its stamp anew after its own build; any other build makes an old stamp worthless.
    rmSync(join(folder, 'site.hash'), { force: true });
  },
});

const unitTests = ['tests/**/*.test.ts', 'tests/**/*.test.tsx', 'tests/**/*.test.mjs'];
/** Tests that watch the model load, or load it otherwise: each has modules of its own. */
const needFreshModules = ['tests/doubt/uncertain-facts.test.ts', 'tests/reference/checks.test.ts'];

// Relative base: the build folder runs unchanged from any static host and any sub-path.
export default defineConfig({
  base: './',
  plugins: [
    // MDX first: what follows must meet its output as JavaScript.
    {
      enforce: 'pre',
      ...mdx({
        jsxImportSource: 'preact',
        remarkPlugins: [remarkGfm, remarkFrontmatter, remarkMdxFrontmatter, lessonParts],
      }),
    },
    factUsesPlugin(import.meta.dirname),
    chunkList(),
    stillLessons(import.meta.dirname),
    formulaModule(formulaTexts),
    offlineSite(),
  ],
  worker: { format: 'es' },
  // Vite reads jsxImportSource from tsconfig only for files its include covers; say it here so no React JSX can slip in.
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: 'build/site',
    emptyOutDir: true,
    target: 'es2022',
    // A preload polyfill and inlined files would need a looser content security policy.
    modulePreload: {
      polyfill: false,
      // The entry names every file that a page needs in advance, which the first view pays for. Only the season is worth it;
      // the other pages find what they import when they come.
      resolveDependencies: (file, needed) =>
        /season-page/.test(file) ? needed : needed.filter((name) => name.endsWith('.css')),
    },
    assetsInlineLimit: 0,
  },
  server: { host: '127.0.0.1' },
  test: {
    environment: 'node',
    // Some tests start processes of their own; beside the others on two cores that takes a while.
    testTimeout: process.env.SEAMFIELD_LONG ? 1_800_000 : 30_000,
    // Every core: a machine that runs the tests has nothing else to do, and one core less doubles the time on two.
    maxWorkers: '100%',
    projects: [
      // One set of modules a worker: loading the model anew for each of 250 files took longer than the tests themselves.
      {
        extends: true,
        test: {
          name: 'together',
          isolate: false,
          include: unitTests,
          exclude: ['tests/browser/**', ...needFreshModules],
        },
      },
      { extends: true, test: { name: 'alone', include: needFreshModules } },
    ],
  },
});
