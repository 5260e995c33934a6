import { expect, test } from 'vitest';
import { describeYarn } from '../../../src/model/mill/yarn.ts';
import { mediumFibre, pimaFibre } from './lint-lot.ts';

const carded = (fibre: typeof mediumFibre, ne = 30) => describeYarn('ringCarded', ne, 'warp', fibre, fibre, 0);

test('Pima against upland of one count: more fibres, less twist, fewer ends, stronger, more even', () => {
  const upland = carded(mediumFibre);
  const pima = carded(pimaFibre);
  expect(pima.fibresInSection).toBeGreaterThan(upland.fibresInSection);
  expect(pima.twistMultiplier).toBeLessThan(upland.twistMultiplier);
  expect(pima.fibreEndsPerCm).toBeLessThan(upland.fibreEndsPerCm);
  expect(pima.tenacityCnPerTex).toBeGreaterThan(upland.tenacityCnPerTex);
  expect(pima.cvPercent).toBeLessThan(upland.cvPercent);
});

test('finer yarn is less even and has fewer fibre ends', () => {
  expect(carded(mediumFibre, 40).cvPercent).toBeGreaterThan(carded(mediumFibre, 20).cvPercent);
  expect(carded(mediumFibre, 40).fibreEndsPerCm).toBeLessThan(carded(mediumFibre, 20).fibreEndsPerCm);
});

test('the index is the unevenness over its limit', () => {
  const yarn = carded(mediumFibre);
  expect(yarn.irregularityIndex * yarn.limitCvPercent).toBeCloseTo(yarn.cvPercent, 12);
});
