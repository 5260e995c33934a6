import { expect, test } from 'vitest';
import { ruleLength, standsFor } from '../../../src/scene/trace/counted.ts';

test.each([
  [72, 1],
  [73, 2],
  [1433, 20],
  [1441, 50],
  [1_000_000, 20_000],
])('of %d bolls, at most 72 drawn: each stands for %d', (count, each) => {
  expect(standsFor(count, 72)).toBe(each);
});
test.each([
  [110, 100],
  [57, 50],
  [2.9, 2],
  [1, 1],
  [0.06, 0.05],
])('a rule in a room of %d is %d long', (room, length) => {
  expect(ruleLength(room)).toBeCloseTo(length, 12);
});
