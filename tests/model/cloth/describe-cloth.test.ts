import { describe, expect, test } from 'vitest';
import { type ClothSpecification, describeCloth } from '../../../src/model/cloth/describe-cloth.ts';
import { single } from './yarn-lot.ts';

const cloth: ClothSpecification = {
  warp: single(30),
  weft: single(30),
  endsPerInch: 68,
  picksPerInch: 68,
  weave: 'plain',
  warpCrimpPercent: 6,
  weftCrimpPercent: 7,
};

test('no crimp given takes the usual one', () => {
  expect(describeCloth({ ...cloth, warpCrimpPercent: null, weftCrimpPercent: null })).toEqual(describeCloth(cloth));
});

test('balanced crimp lets both waves fill the two diameters', () => {
  const { construction } = describeCloth({ ...cloth, weftCrimpPercent: 'balanced' });
  const height = (crimp: number) => (4 / 3) * (25.4 / 68) * Math.sqrt(crimp / 100);
  const { warpDiameterMm, weftDiameterMm } = describeCloth(cloth);
  expect(height(6) + height(construction.weftCrimpPercent)).toBeCloseTo(warpDiameterMm + weftDiameterMm, 12);
});

describe('more of it is heavier', () => {
  const { gramsPerSquareMetre } = describeCloth(cloth);
  test.each<[string, Partial<ClothSpecification>]>([
    ['more ends', { endsPerInch: 72 }],
    ['more picks', { picksPerInch: 72 }],
    ['coarser warp', { warp: single(28) }],
    ['coarser weft', { weft: single(28) }],
    ['more crimp', { warpCrimpPercent: 8 }],
  ])('%s', (_name, change) => {
    expect(describeCloth({ ...cloth, ...change }).gramsPerSquareMetre).toBeGreaterThan(gramsPerSquareMetre);
  });
});

test('two plied yarns weigh as their resultant, count once in the thread count and twice at customs', () => {
  const plied = describeCloth({ ...cloth, warp: { singleTex: single(60).singleTex, singles: 2 } });
  const whole = describeCloth(cloth);
  expect(plied.gramsPerSquareMetre).toBeCloseTo(whole.gramsPerSquareMetre, 9);
  expect(plied.threadCount).toBe(136);
  expect(plied.singlesPerSquareCm).toBeCloseTo(1.5 * whole.singlesPerSquareCm, 9);
});

test('weights of one cloth in every unit agree', () => {
  const found = describeCloth(cloth);
  expect(found.gramsPerMetre * found.metresPerKilogram).toBeCloseTo(1000, 9);
  expect(found.gramsPerSquareMetre * found.squareMetresPerKilogram).toBeCloseTo(1000, 9);
  expect(found.yardsPerPound * 0.9144 * (found.gramsPerMetre / 453.59237)).toBeCloseTo(1, 9);
});
