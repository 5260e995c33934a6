import { expect, test } from 'vitest';
import type { Check } from '../../src/checks/check.ts';
import { runChecks } from '../../src/cli/run-checks.ts';

const check = (more: Partial<Check>): Check =>
  ({
    id: 'x',
    link: 'units',
    kind: 'exact',
    what: 'an invented row',
    source: 'invented',
    unit: 'kg',
    expected: { kind: 'near', value: 10, tolerance: 0.5 },
    tool: { name: 'units', from: 'x', to: 'y' },
    ours: () => 10.2,
    ...more,
  }) as Check;

test('a tool that says what the table says leaves the check as it is', () => {
  const { judged, notRun, disagreed } = runChecks([check({})], () => 10.001);
  expect([judged[0]!.passed, notRun.size, disagreed.size]).toEqual([true, 0, 0]);
});

test('a tool that says something else fails the check, though ours agrees with the table', () => {
  const { judged, disagreed } = runChecks([check({})], () => 10.1);
  expect(judged[0]!.passed).toBe(false);
  expect(disagreed.get('x')).toBe(10.1);
});

test('a tool that cannot answer fails the check', () => {
  expect(runChecks([check({})], () => Number.NaN).judged[0]!.passed).toBe(false);
});

test('without its tool a check is not run, unless it already fails', () => {
  const { judged, notRun } = runChecks([check({}), check({ id: 'wrong', ours: () => 99 })], () => null);
  expect([...notRun]).toEqual(['x']);
  expect(judged.map(({ passed }) => passed)).toEqual([true, false]);
});

test('a check without a tool asks nobody', () => {
  const { tool: _tool, ...plain } = check({});
  const { notRun } = runChecks([plain as Check], () => null);
  expect(notRun.size).toBe(0);
});
