import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.ts';
import type { Expected } from '../../src/checks/check.ts';
import { judgeCheck } from '../../src/checks/judge-check.ts';

const said = (expected: Expected) =>
  expected.kind === 'near'
    ? `${expected.value} ± ${expected.tolerance}`
    : expected.kind === 'between'
      ? `${expected.low} to ${expected.high}`
      : expected.word;

// Each row names its source; the titles are the record of what was checked.
test.each(allChecks.map((check) => [`${check.id} (${check.kind}): ${check.what} — ${check.source}`, check] as const))(
  '%s',
  (_title, check) => {
    const { ours, passed } = judgeCheck(check);
    expect(passed, `ours ${ours} ${check.unit}, expected ${said(check.expected)}`).toBe(true);
  },
);

test('every check has a name of its own, a source and, for a miss, a reason', () => {
  expect(new Set(allChecks.map(({ id }) => id)).size).toBe(allChecks.length);
  for (const check of allChecks) {
    expect(check.source.length, check.id).toBeGreaterThan(3);
    expect(check.what.length, check.id).toBeGreaterThan(5);
    if (check.kind === 'knownMiss') expect(check.reason.length, check.id).toBeGreaterThan(10);
  }
});
