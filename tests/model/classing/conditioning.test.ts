import { expect, test } from 'vitest';
import {
  moisturePercentDryBasis,
  moisturePercentWetBasis,
  readyToTest,
} from '../../../src/model/classing/conditioning.ts';
import { partMasses } from '../../../src/model/lot.ts';

test('water over dry lint: 7 kg on 100 kg is 7 %, inside the gate; trash water does not count', () => {
  const lot = { dryKg: partMasses({ lint: 100, leaf: 3 }), waterKg: { lint: 7, seed: 0, trash: 5 } };
  expect(moisturePercentDryBasis(lot)).toBe(7);
  expect(readyToTest(moisturePercentDryBasis(lot))).toBe(true);
});
test('the same water is 6.54 % of the damp lint', () => {
  const lot = { dryKg: partMasses({ lint: 100 }), waterKg: { lint: 7, seed: 0, trash: 0 } };
  expect(moisturePercentWetBasis(lot)).toBeCloseTo(6.542, 3);
});
test('no lint, no moisture', () => {
  expect(moisturePercentDryBasis({ dryKg: partMasses({}), waterKg: { lint: 0, seed: 0, trash: 0 } })).toBe(0);
});
