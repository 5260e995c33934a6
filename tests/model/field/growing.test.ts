import { expect, test } from 'vitest';
import { openPercentOf, plantedField } from '../../../src/model/field/growing.ts';
import { evenYear, ordinary, weatherOf } from './plans.ts';

test('a field on its planting day: nothing grown, the season ends on 20 December', () => {
  const field = plantedField(ordinary.midSouth, weatherOf('midSouth', 1));
  expect(field.lastDay).toBe(354 - 121);
  expect(field.stages).toEqual({ emerged: -1, firstSquare: -1, firstFlower: -1, cutOut: -1, firstOpenBoll: -1 });
  expect(Object.values(field.totals).every((count) => count === 0)).toBe(true);
  expect(field.soil.irrigationLeftMm).toBeCloseTo(4 * 25.4, 9);
});
test('the ground holds on 1 January what the climate’s winter leaves', () => {
  expect(plantedField(ordinary.highPlains, evenYear(50, 30, 0)).soil.waterMm).toBeCloseTo(0.75 * 130, 9);
  expect(plantedField(ordinary.midSouth, evenYear(50, 30, 0)).soil.waterMm).toBe(150);
});
test('open percent counts kept bolls, and is nothing where there are none', () => {
  const field = plantedField(ordinary.midSouth, weatherOf('midSouth', 1));
  expect(openPercentOf(field)).toBe(0);
  field.totals.bollsKept = 8;
  field.totals.bollsOpen = 2;
  expect(openPercentOf(field)).toBe(25);
});
