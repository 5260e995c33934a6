import { expect, test } from 'vitest';
import { type Decision, decisionTable } from '../../src/model/decisions.ts';
import { rulerTicks } from '../../src/ui/ruler-ticks.ts';

const numbers = Object.values(decisionTable).flatMap((station) =>
  Object.entries(station as Record<string, Decision>).flatMap(([key, decision]) =>
    decision.kind === 'number' ? [[key, decision] as const] : [],
  ),
);

test.each(numbers)('the ruler of %s has two to seven great marks, on steps, inside its ends', (_, decision) => {
  const { great, small } = rulerTicks(decision.low, decision.high, decision.step);
  expect(great.length).toBeGreaterThanOrEqual(2);
  expect(great.length).toBeLessThanOrEqual(7);
  for (const mark of [...great, ...small]) {
    expect(mark).toBeGreaterThanOrEqual(decision.low - 1e-9);
    expect(mark).toBeLessThanOrEqual(decision.high + 1e-9);
  }
  for (const mark of great) expect(small.some((at) => Math.abs(at - mark) < 1e-9)).toBe(true);
  expect(small.length).toBeLessThanOrEqual(60);
});

test('a week ruler counts its small marks from the low end', () => {
  expect(rulerTicks(60, 88, 1, 7).small).toEqual([60, 67, 74, 81, 88]);
});
