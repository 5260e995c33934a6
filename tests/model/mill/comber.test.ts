import { expect, test } from 'vitest';
import { readBeard } from '../../../src/model/length/beard.ts';
import { comb } from '../../../src/model/mill/comber.ts';
import { mediumFibre } from './lint-lot.ts';

test.each([8, 14, 20])('takes the noil that was set: %i %', (noilPercent) => {
  expect(comb(mediumFibre, noilPercent).removedFraction).toBeCloseTo(noilPercent / 100, 12);
});

test('more noil, more uniform, each step less than the one before', () => {
  const uniformity = [0, 8, 14, 20].map((noil) =>
    noil === 0
      ? readBeard(mediumFibre.lengths).uniformityPercent
      : readBeard(comb(mediumFibre, noil).fibre.lengths).uniformityPercent,
  );
  const gains = uniformity.slice(1).map((value, i) => (value - uniformity[i]!) / [8, 6, 6][i]!);
  expect(Math.min(...gains)).toBeGreaterThan(0);
  expect(gains[2]).toBeLessThan(gains[1]!);
});

test('leaves fewer neps and touches nothing else of the fibre', () => {
  const { fibre } = comb(mediumFibre, 14);
  expect(fibre.nepsRatio).toBeCloseTo(1.2, 12);
  expect(fibre).toMatchObject({ linearDensityMtex: 172, maturityRatio: 0.91, strengthGPerTex: 29 });
});
