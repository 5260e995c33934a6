import { expect, test } from 'vitest';
import { crushSeed, seedRoomCubicFeet } from '../../../src/model/gin/seed.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';

test('the mill loses nothing but what it calls loss', () => {
  const { oilKg, mealKg, hullsKg, lintersKg, lossKg } = crushSeed(1000);
  expect(oilKg + mealKg + hullsKg + lintersKg + lossKg).toBeCloseTo(1000, 9);
  expect(lossKg).toBeGreaterThan(0);
  expect(lossKg).toBeLessThan(60);
});
test('one pound needs a twenty-fifth of a cubic foot', () => {
  expect(seedRoomCubicFeet(kilogramsFromPounds(1))).toBeCloseTo(0.04, 12);
});
