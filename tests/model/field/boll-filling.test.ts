import { expect, test } from 'vitest';
import { fillOf, lengthFraction, massFraction, seedsUnderStress } from '../../../src/model/field/boll-filling.ts';

test('a boll has a tenth of its mass when the wall begins, two fifths when length is done, all when it opens', () => {
  expect([0, 17, 27, 45, 60].map(massFraction)).toEqual([0, 0.1, 0.4, 1, 1]);
});
test('mass never falls with age', () => {
  for (let age = 0; age < 50; age += 0.5) expect(massFraction(age + 0.5)).toBeGreaterThanOrEqual(massFraction(age));
});
test('drought takes seeds and thins lint; cool filling thins it too', () => {
  expect(seedsUnderStress(0)).toBe(1);
  expect(seedsUnderStress(1)).toBeLessThan(1);
  expect(fillOf(45, 0, 0)).toBe(1);
  expect(fillOf(45, 0.5, 0)).toBeLessThan(1);
  expect(fillOf(45, 0, -0.05)).toBeCloseTo(0.95, 12);
});
test('however bad the weather some wall is laid down', () => {
  expect(fillOf(45, 1, -5)).toBeGreaterThan(0);
});
test('fibres are full length at 27 days, after the wall has begun at 17 — Kinetics of Cell Elongation and Secondary Wall Thickening, 1973', () => {
  expect([0, 13.5, 27, 45].map(lengthFraction)).toEqual([0, 0.5, 1, 1]);
  expect(lengthFraction(17)).toBeLessThan(1);
  expect(lengthFraction(-3)).toBe(0);
});
