import { expect, test } from 'vitest';
import { fieldCrop } from '../../../src/model/field/field-crop.ts';
import { pickedCohorts } from '../../../src/model/field/picked-cotton.ts';
import { stepOpening } from '../../../src/model/field/step-opening.ts';
import { poundsFromKilograms } from '../../../src/model/units.ts';
import { flowerOn, standingField, warmYear } from './hand-made-field.ts';
import { changedFrom, ordinary } from './plans.ts';

const crop = (aidDay: number, frostDay: number) => {
  const weather = changedFrom(warmYear, ordinary.midSouth.plantingDayOfYear + 109, { rainInches: 0.1 });
  const field = standingField(ordinary.midSouth, weather);
  flowerOn(field, 60, 1);
  flowerOn(field, 64, 1);
  for (let i = 60; i < 140; i++) stepOpening(field, i);
  field.pickDays.push(118);
  Object.assign(field, { aidDay, frostDay });
  return { field, made: fieldCrop(field, pickedCohorts(field), 77) };
};
test('two full bolls on each of 40 000 plants make their lint, and the lot holds it for all the acres', () => {
  const { field, made } = crop(110, -1);
  const lintKg = (2 * field.variety.seedsPerBoll * field.variety.lintPerSeedMg * 40_000) / 1e6;
  expect(made.lintLbPerAcre).toBeCloseTo(poundsFromKilograms(lintKg), 6);
  expect(made.grown.dryKg.lint + made.grown.waterKg.lint).toBeCloseTo(lintKg * field.plan.acres, 6);
  expect(made.openPercentAtHarvest).toBe(77);
});
test('rain, days and loss are means over the lint', () => {
  const { made } = crop(110, -1);
  // Open on days 108 and 112, picked on 118; a tenth of an inch each day from 109.
  expect(made.rainAfterOpeningInches).toBeCloseTo((1 + 0.6) / 2, 9);
  expect(made.daysOpenMean).toBeCloseTo(8, 9);
  expect(made.weatheredFraction).toBeCloseTo(0.0093 * 0.8, 9);
});
test('leaf: none of it fell without aid or frost, nor from a frost after the picking', () => {
  expect(crop(-1, -1).made.leafRemaining).toBe(1);
  expect(crop(-1, 130).made.leafRemaining).toBe(1);
  expect(crop(110, -1).made.leafRemaining).toBeLessThan(0.4);
  expect(crop(-1, 104).made.leafRemaining).toBeLessThan(0.5);
});
