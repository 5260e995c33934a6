import { expect, test } from 'vitest';
import { fieldDay } from '../../../src/model/field/field-day.ts';
import { flowerOn, standingField } from './hand-made-field.ts';

test('the record of a day: its weather, its heat, its water, its fruit', () => {
  const field = standingField();
  flowerOn(field, 60, 0.5, 0.8);
  field.totals.squares = 3;
  field.totals.squaresShed = 0.4;
  field.totals.flowers += 2;
  field.totals.bollsShed = 0.3;
  field.totals.bollsKept += 1.2;
  field.totals.bollsOpen = 0.4;
  const day = fieldDay(field, 60, { supply: 0.75, irrigatedMm: 25.4 }, 6);
  expect(day).toMatchObject({
    dayOfYear: 181,
    dd60: 20,
    dd60SincePlanting: 61 * 20,
    irrigationInches: 1,
    waterStress: 0.25,
    soilWaterFraction: 1,
    nodesAboveWhiteFlower: 6,
    openPercent: 25,
  });
  expect(day.perPlant.squares).toBeCloseTo(3 - 0.4 - 2.5, 12);
  expect(day.perPlant.flowersToday).toBe(0.5);
  expect(day.perPlant.greenBolls).toBeCloseTo(2.5 - 0.3 - 0.4 - 0.5, 12);
  expect(day.perPlant.shed).toBeCloseTo(0.7, 12);
});
