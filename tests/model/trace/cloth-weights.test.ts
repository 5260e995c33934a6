import { expect, test } from 'vitest';
import { clothNames, clothOunces } from '../../../src/model/trace/cloth-weights.ts';
import { ouncesPerSquareYardFromGsm } from '../../../src/model/units.ts';

test('named cloths have weights, other words have none', () => {
  expect(clothNames).toContain('denim');
  expect(clothOunces('denim')).toBe(11.2);
  expect(clothOunces('toString')).toBeUndefined();
});
test.each([
  ['poplin', 110, 160],
  ['percale', 100, 150],
  ['jersey', 140, 200],
  ['denim', 200, 400],
  ['canvas', 300, 500],
])('%s weighs %d to %d g/m2 (ranges by end use, a seller’s chart, aaenterprises.in)', (name, low, high) => {
  expect(clothOunces(name)).toBeGreaterThanOrEqual(ouncesPerSquareYardFromGsm(low));
  expect(clothOunces(name)).toBeLessThanOrEqual(ouncesPerSquareYardFromGsm(high));
});
