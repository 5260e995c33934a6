import { expect, test } from 'vitest';
import { seedCottonWaterKg } from '../../../src/model/harvest/seed-cotton-water.ts';
import { moistureFraction, partMasses, totalDryKg, totalWaterKg } from '../../../src/model/lot.ts';

const dryKg = partMasses({ lint: 390, seed: 530, burs: 40, leaf: 30, motes: 10 });

test('the whole has the wanted moisture, seed and trash more than lint', () => {
  const waterKg = seedCottonWaterKg(dryKg, 9.5);
  const water = totalWaterKg(waterKg);
  expect(water / (water + totalDryKg(dryKg))).toBeCloseTo(0.095, 12);
  const lot = { dryKg, waterKg };
  expect(moistureFraction(lot, 'lint')).toBeLessThan(moistureFraction(lot, 'trash'));
  expect(moistureFraction(lot, 'trash')).toBeLessThan(moistureFraction(lot, 'seed'));
});
test('seed holds about 10 % where lint holds 7 % — ASAE D245 and ASHRAE tables at 65 % humidity', () => {
  // The mixture whose lint is at 7 % wet basis.
  const lot = { dryKg, waterKg: seedCottonWaterKg(dryKg, 8.86) };
  expect(Math.abs(100 * moistureFraction(lot, 'lint') - 7)).toBeLessThan(0.1);
  expect(Math.abs(100 * moistureFraction(lot, 'seed') - 10)).toBeLessThan(0.5);
});
test('nothing holds no water', () => {
  expect(totalWaterKg(seedCottonWaterKg(partMasses({}), 12))).toBe(0);
});
