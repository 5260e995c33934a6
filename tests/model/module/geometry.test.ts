import { expect, test } from 'vitest';
import { moduleCountFor, packingLbPerCubicFoot } from '../../../src/model/module/geometry.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';

test.each([
  ['round', 50_000, 10],
  ['conventional', 50_000, 2],
  ['wagon', 50_000, 33],
  ['round', 10, 1],
  ['conventional', 0, 1],
] as const)('%s: %i lb make %i', (kind, pounds, count) => {
  expect(moduleCountFor(kilogramsFromPounds(pounds), kind)).toBe(count);
});
test('a round module is packed tighter than a conventional one, a wagon least', () => {
  expect(packingLbPerCubicFoot(5000, 'round')).toBeGreaterThan(packingLbPerCubicFoot(21_000, 'conventional'));
  expect(packingLbPerCubicFoot(21_000, 'conventional')).toBeGreaterThan(packingLbPerCubicFoot(1500, 'wagon'));
});
