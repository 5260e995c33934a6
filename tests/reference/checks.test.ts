import { expect, test, vi } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.ts';
import type { Expected } from '../../src/checks/check.ts';
import { judgeCheck } from '../../src/checks/judge-check.ts';

// The long run stands on two hundred seasons behind every mean instead of forty.
vi.mock('../../src/checks/seed-count.ts', async () => {
  const { long } = await import('../laws/runs.ts');
  return { seedCount: long ? 200 : 40 };
});

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
