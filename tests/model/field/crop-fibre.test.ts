import { describe, expect, test } from 'vitest';
import { cropFibre, meanFibreMm, peakOf } from '../../../src/model/field/crop-fibre.ts';
import type { PickedCohort } from '../../../src/model/field/picked-cotton.ts';
import { varietyOf } from '../../../src/model/field/varieties.ts';
import { breakAtRandom } from '../../../src/model/length/breakage.ts';
import { gaussianByMass, totalLengthMm } from '../../../src/model/length/length-distribution.ts';
import { meanLengthMm } from '../../../src/model/length/statistics.ts';

const variety = varietyOf('uplandMedium', 'present');
const cohort = (over: Partial<PickedCohort> = {}): PickedCohort => ({
  flowerDay: 60,
  openDay: 110,
  pickDay: 125,
  rainInches: 0,
  filled: 1,
  earlyStress: 0,
  fillStress: 0,
  coldNights: 0,
  bolls: 1,
  seeds: 28,
  lintG: 1.9,
  seedG: 2.7,
  lintByPositionG: [1.9, 0, 0, 0],
  ...over,
});

describe('mean fibre length', () => {
  test.each([
    [31.3, 0.16, 0.0087],
    [40, 0.12, 0.0037],
    [28, 0.16, 0.015],
  ])('the closed form is the mean of the lattice: peak %d, spread %d, %d breaks/mm', (peak, spread, broken) => {
    const lattice = meanLengthMm(breakAtRandom(gaussianByMass(peak, spread), broken), 'number');
    expect(Math.abs(meanFibreMm(peak, spread, broken) / lattice - 1)).toBeLessThan(0.01);
  });
});
describe('the blend', () => {
  test('one cohort is its own peak, broken once', () => {
    const { lengths } = cropFibre([cohort()], variety);
    const own = breakAtRandom(gaussianByMass(31.3, 0.16), 0.0087);
    expect(Math.max(...lengths.map((number, i) => Math.abs(number - own[i]!)))).toBeLessThan(1e-12);
  });
  test('linear density is all the lint over all the length, whatever the mix', () => {
    const thin = cohort({ lintG: 1, earlyStress: 0.8 });
    const both = cropFibre([cohort(), thin], variety);
    const km = (c: PickedCohort) => (c.lintG * 1000) / cropFibre([c], variety).linearDensityMtex;
    expect(both.linearDensityMtex).toBeCloseTo(2900 / (km(cohort()) + km(thin)), 9);
    expect(totalLengthMm(both.lengths)).toBeCloseTo(1, 9);
  });
  test('color and strength are means over the lint', () => {
    const rained = cohort({ rainInches: 3, lintG: 0.95, seeds: 14 });
    const [a, b, both] = [[cohort()], [rained], [cohort(), rained]].map((c) => cropFibre(c, variety));
    expect(both!.reflectanceRd).toBeCloseTo((2 * a!.reflectanceRd + b!.reflectanceRd) / 3, 9);
    expect(b!.reflectanceRd).toBeLessThan(a!.reflectanceRd);
    expect(cropFibre([cohort({ fillStress: 1 })], variety).strengthGPerTex).toBeLessThan(a!.strengthGPerTex);
  });
  test('half-filled bolls give thin, immature fibre', () => {
    const full = cropFibre([cohort()], variety);
    const half = cropFibre([cohort({ lintG: 0.95 })], variety);
    expect(half.linearDensityMtex).toBeCloseTo(full.linearDensityMtex / 2, 9);
    expect(half.maturityRatio).toBeCloseTo(full.maturityRatio / 2, 9);
  });
});
test('drought and cold nights each shorten the peak', () => {
  expect(peakOf(variety, 0, 0)).toBe(variety.peakMm);
  expect(peakOf(variety, 0.5, 0)).toBeLessThan(variety.peakMm);
  expect(peakOf(variety, 0, 10)).toBeLessThan(variety.peakMm);
});
