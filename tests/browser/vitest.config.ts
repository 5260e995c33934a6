import { defineConfig } from 'vitest/config';

/** Tests that measure the page's own time, or take its drawing context away: nothing else runs beside them. */
const aloneTests = ['tests/browser/measured/**/*.test.ts'];

// The built site in a real Chromium.
export default defineConfig({
  test: {
    root: '.',
    environment: 'node',
    globalSetup: ['tests/browser/serve-site.mjs'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'side by side',
          include: ['tests/browser/**/*.test.ts'],
          exclude: aloneTests,
          // One set of modules, one Chromium and its open pages for all files of a process.
          isolate: false,
          // A page waits as often as it works: two at once keep two cores busy.
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: { name: 'alone', include: aloneTests, maxWorkers: 1, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
