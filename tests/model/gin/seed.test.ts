import { expect, test } from 'vitest';
import { crushSeed, paidSeedKg, seedRoomCubicFeet } from '../../../src/model/gin/seed.ts';
import { partMasses } from '../../../src/model/lot.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';
import { evenlyMoist } from './hand-made-lot.ts';

test('the mill loses nothing but what it calls loss', () => {
  const { oilKg, mealKg, hullsKg, lintersKg, lossKg } = crushSeed(1000);
  expect(oilKg + mealKg + hullsKg + lintersKg + lossKg).toBeCloseTo(1000, 9);
  expect(lossKg).toBeGreaterThan(0);
  expect(lossKg).toBeLessThan(60);
});
test('one pound needs a twenty-fifth of a cubic foot', () => {
  expect(seedRoomCubicFeet(kilogramsFromPounds(1))).toBeCloseTo(0.04, 12);
});

test('seed is paid as it weighs up to 12 % moisture, and no more for water above', () => {
  const seedHouse = (percent: number) => {
    const dryKg = partMasses({ seed: 880, lint: 3 });
    return { dryKg, waterKg: evenlyMoist(dryKg, percent) };
  };
  for (const percent of [6, 10, 12]) expect(paidSeedKg(seedHouse(percent))).toBeCloseTo(883 / (1 - percent / 100), 9);
  expect(paidSeedKg(seedHouse(18))).toBeCloseTo(883 / 0.88, 9);
});
