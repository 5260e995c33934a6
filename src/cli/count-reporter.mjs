import { writeFileSync } from 'node:fs';

/**
 * A vitest reporter that counts. A test file that cannot be loaded, an error outside any test and a skipped test each count as a
 * failure: a check that did not run has not passed. Writes {passed, failed, skipped} to the file of SEAMFIELD_COUNTS.
 */
export default class CountReporter {
  onTestRunEnd(modules, unhandledErrors) {
    const counts = { passed: 0, failed: unhandledErrors.length, skipped: [] };
    for (const module of modules) {
      counts.failed += module.errors().length;
      for (const suite of module.children.allSuites()) counts.failed += suite.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') counts.passed++;
        else counts.failed++;
        if (state === 'skipped') counts.skipped.push(`${module.moduleId}: ${test.fullName}`);
      }
    }
    writeFileSync(process.env.SEAMFIELD_COUNTS, JSON.stringify(counts));
  }
}
