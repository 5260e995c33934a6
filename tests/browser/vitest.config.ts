import { defineConfig } from 'vitest/config';

/** What takes the page's own time: a measure, not a check, for the long run, with nothing beside it. */
const measures = ['tests/browser/measured/**/*.test.ts'];

const sideBySide = {
  extends: true as const,
  test: {
    name: 'side by side',
    include: ['tests/browser/**/*.test.ts'],
    exclude: measures,
    // One set of modules, one Chromium and its open pages for all files of a process.
    isolate: false,
    // A page waits as well as works: one more than the cores keeps two of them busy.
    maxWorkers: 3,
    sequence: { groupOrder: 0 },
  },
};
const alone = {
  extends: true as const,
  test: { name: 'alone', include: measures, maxWorkers: 1, sequence: { groupOrder: 1 } },
};

// The built site in a real Chromium.
export default defineConfig({
  test: {
    root: '.',
    environment: 'node',
    globalSetup: ['tests/browser/serve-site.mjs'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: process.env.SEAMFIELD_LONG === '1' ? [sideBySide, alone] : [sideBySide],
  },
});
