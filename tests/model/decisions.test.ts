import { describe, expect, test } from 'vitest';
import { type Decision, decisionTable } from '../../src/model/decisions.ts';

const decisions = Object.entries(decisionTable).flatMap(([station, table]) =>
  Object.entries(table as Record<string, Decision>).map(([key, decision]) => ({ name: `${station}.${key}`, decision })),
);

describe('a control can be made of every decision', () => {
  test.each(decisions)('$name', ({ decision }) => {
    if (decision.kind === 'number') {
      expect(decision.low).toBeLessThan(decision.high);
      const stops = (decision.high - decision.low) / decision.step;
      expect(stops).toBeCloseTo(Math.round(stops), 9);
    } else if (decision.kind === 'choice') {
      expect(decision.options.length).toBeGreaterThan(1);
      expect(new Set(decision.options).size).toBe(decision.options.length);
    } else {
      expect(decision.kind).toBe('switch');
    }
  });
});

test('one to four decisions at each station', () => {
  for (const table of Object.values(decisionTable)) {
    expect(Object.keys(table).length).toBeGreaterThanOrEqual(1);
    expect(Object.keys(table).length).toBeLessThanOrEqual(4);
  }
});
