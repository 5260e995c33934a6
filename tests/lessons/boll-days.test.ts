import { expect, test } from 'vitest';
import { bollDay, bollDays } from '../../src/lessons/boll-days.ts';

test('Kinetics of Cell Elongation, 1973: full length at 27 days with 40 % of the wall; an open boll has all of it', () => {
  expect(bollDay(27).length).toBe(1);
  expect(bollDay(27).wall).toBeCloseTo(0.4, 9);
  expect(bollDay(45).wall).toBe(1);
});

test('length comes first: it is always ahead of the wall, and neither ever shrinks', () => {
  const days = bollDays.map(bollDay);
  for (const { length, wall } of days) expect(length).toBeGreaterThanOrEqual(wall);
  for (let i = 1; i < days.length; i++) {
    expect(days[i]!.mm).toBeGreaterThanOrEqual(days[i - 1]!.mm);
    expect(days[i]!.wall).toBeGreaterThan(days[i - 1]!.wall);
  }
});
