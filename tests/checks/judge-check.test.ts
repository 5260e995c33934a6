import { expect, test } from 'vitest';
import type { Check } from '../../src/checks/check.ts';
import { judgeCheck, meets } from '../../src/checks/judge-check.ts';
import { summariseChecks } from '../../src/checks/summarise-checks.ts';

const check = (more: Partial<Check>): Check =>
  ({
    id: 'x',
    link: 'gin',
    kind: 'exact',
    what: 'an invented row',
    source: 'invented',
    unit: 'kg',
    expected: { kind: 'near', value: 10, tolerance: 0.5 },
    ours: () => 10.4,
    ...more,
  }) as Check;

test('a near, a band and a word are met or not', () => {
  expect(meets({ kind: 'near', value: 10, tolerance: 0.5 }, 10.5)).toBe(true);
  expect(meets({ kind: 'near', value: 10, tolerance: 0.5 }, 10.51)).toBe(false);
  expect(meets({ kind: 'between', low: 1, high: 2 }, 2)).toBe(true);
  expect(meets({ kind: 'between', low: 1, high: 2 }, Number.NaN)).toBe(false);
  expect(meets({ kind: 'is', word: '41' }, '41')).toBe(true);
  expect(meets({ kind: 'is', word: '41' }, 41)).toBe(false);
});

test('a known miss passes while it misses as recorded, and fails when it hits or drifts', () => {
  const miss = { kind: 'knownMiss', recorded: { value: 12, tolerance: 0.1 }, reason: 'planted for this test' } as const;
  expect(judgeCheck(check({ ...miss, ours: () => 12.05 })).passed).toBe(true);
  expect(judgeCheck(check({ ...miss, ours: () => 10.1 })).passed).toBe(false);
  expect(judgeCheck(check({ ...miss, ours: () => 13 })).passed).toBe(false);
});

test('an error of the model is a failed check, with its words', () => {
  const judged = judgeCheck(
    check({
      ours: () => {
        throw new Error('no cotton');
      },
    }),
  );
  expect(judged.passed).toBe(false);
  expect(judged.ours).toContain('no cotton');
});

test('the summary counts each check once', () => {
  const judged = [
    check({}),
    check({ kind: 'calibrated' }),
    check({ kind: 'definition' }),
    check({ kind: 'plainSum' }),
    check({ ours: () => 99 }),
    check({ id: 'absent' }),
  ].map(judgeCheck);
  expect(summariseChecks(judged, new Set(['absent']))).toEqual({
    counted: 2,
    definition: 1,
    plainSum: 1,
    knownMiss: 0,
    failed: 1,
    notRun: 1,
  });
});
