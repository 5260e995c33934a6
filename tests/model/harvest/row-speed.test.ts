import { expect, test } from 'vitest';
import { rowFeetPerSecond } from '../../../src/model/harvest/row-speed.ts';

const MPH_PER_FOOT_A_SECOND = 3600 / 5280;

test('8 acres an hour over six 38-inch rows is 3.47 mph: acres an hour = mph x width in feet / 8.25 — ASABE EP496, field capacity', () => {
  const mph = rowFeetPerSecond(8, 6, 38) * MPH_PER_FOOT_A_SECOND;
  expect((mph * 19) / 8.25).toBeCloseTo(8, 9);
  expect(mph).toBeCloseTo(3.474, 3);
});
test('half the rows at a time must go twice as fast', () => {
  expect(rowFeetPerSecond(8, 3, 38)).toBeCloseTo(2 * rowFeetPerSecond(8, 6, 38), 12);
});
