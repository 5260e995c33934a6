import { expect, test } from 'vitest';
import { ginEnergy, shareOfAverageGin } from '../../../src/model/gin/energy.ts';

const use = { stand: 'saw', dryers: 1, dryerAirF: 180, moistureRestored: false } as const;

test('a roller gin takes 1.58 times the electricity of a saw gin — Funk & Hardin 2012', () => {
  const roller = ginEnergy({ ...use, stand: 'roller' }).electricityKwh;
  expect(roller / ginEnergy(use).electricityKwh).toBeCloseTo(1.58, 2);
});
test('the first dryer burns 1.25 to 1.45 L a bale, 32 to 37 MJ — Hardin & Funk, 2011 season', () => {
  const { propaneLitres, heatMj } = ginEnergy(use);
  expect(propaneLitres).toBeGreaterThanOrEqual(1.25);
  expect(propaneLitres).toBeLessThanOrEqual(1.45);
  expect(heatMj).toBeGreaterThan(32);
  expect(heatMj).toBeLessThan(37);
});
test('fuel goes with the heating, and cold dryers burn none', () => {
  expect(ginEnergy({ ...use, dryerAirF: 290 }).propaneLitres).toBeCloseTo(2 * ginEnergy(use).propaneLitres, 12);
  expect(ginEnergy({ ...use, dryers: 0 }).propaneLitres).toBe(0);
  expect(ginEnergy({ ...use, dryers: 2 }).propaneLitres).toBeGreaterThan(ginEnergy(use).propaneLitres);
  expect(ginEnergy({ ...use, moistureRestored: true }).propaneLitres).toBeGreaterThan(ginEnergy(use).propaneLitres);
});
test('half a season of an average gin', () => {
  expect(shareOfAverageGin(7320)).toBeCloseTo(0.5, 2);
});
