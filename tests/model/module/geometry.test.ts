import { expect, test } from 'vitest';
import { moduleCountFor, moduleFeet, packingLbPerCubicFoot } from '../../../src/model/module/geometry.ts';
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

test('a round module is 7.5 ft across and 8 ft wide (cottongrower.com), a long one 8 ft high and 32 ft long (Searcy et al. 2010)', () => {
  const round = moduleFeet('round');
  expect(round.high).toBeCloseTo(7.5, 3);
  expect(round.long).toBeCloseTo(8, 3);
  expect(moduleFeet('conventional')).toEqual({ high: 8, long: 32 });
  expect(moduleFeet('wagon')).toEqual({ high: 5, long: null });
});
