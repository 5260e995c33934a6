import { expect, test } from 'vitest';
import {
  baleShareOf,
  bollsFor,
  clothMassKg,
  fibresIn,
  fieldFor,
  handPickingDaysFor,
  lintForKg,
  machineMinutesFor,
  rowFeetOn,
  seedCottonForKg,
  squareSideInches,
  waterOnLitres,
  yarnForClothKg,
  yarnKilometres,
} from '../../../src/model/trace/steps-back.ts';

const pounds = (kg: number) => kg / 0.45359237;

test('the worked twin quilt: 2.68 lb of cloth to 1,370 bolls at yields of 0.95, 0.98 and 0.90, 38 % and 4 g (by hand)', () => {
  const clothKg = clothMassKg(11.73, 3.66);
  const yarnKg = yarnForClothKg(clothKg, 0.95, 0.98);
  const lintKg = lintForKg(yarnKg, 0.9, 1.25 * 0.45359237, 0.9);
  expect(pounds(lintKg)).toBeCloseTo(4.59, 2);
  const seedCottonKg = seedCottonForKg(lintKg, 0.38);
  expect(pounds(seedCottonKg)).toBeCloseTo(12.1, 1);
  const bolls = bollsFor(seedCottonKg, 1, 4);
  expect(Math.abs(bolls / 1370 - 1)).toBeLessThan(0.01);
});
test('an acre has 13,756 feet of 38 in row (Mississippi State boll-count table)', () => {
  expect(rowFeetOn(4046.8564224, 38)).toBeCloseTo(13_756, -1);
});
test('an inch of rain on an acre is 27,154 gallons (US Geological Survey, from memory)', () => {
  expect(waterOnLitres(4046.8564224, 1) / 3.785411784).toBeCloseTo(27_154, -1);
});
test('a bale of 480 lb is one bale; a plant of 41,000 an acre has a 41,000th of it', () => {
  expect(baleShareOf(480 * 0.45359237)).toBeCloseTo(1, 12);
  expect(fieldFor(41_000, 41_000)).toBeCloseTo(4046.8564224, 9);
});
test('200 lb a day and 8 acres an hour', () => {
  expect(handPickingDaysFor(100 * 0.45359237, 200)).toBeCloseTo(0.5, 12);
  expect(machineMinutesFor(8 * 4046.8564224, 8)).toBeCloseTo(60, 9);
});
test('a kilogram of 20 tex runs 50 km, and a gram of 170 mtex fibers of 23 mm holds 255,754 (by definition of tex)', () => {
  expect(yarnKilometres(1, 20)).toBe(50);
  expect(fibresIn(0.001, 170, 23)).toBeCloseTo(255_754.5, 0);
});
test('a square yard has sides of 36 in', () => {
  expect(squareSideInches(1)).toBe(36);
});
