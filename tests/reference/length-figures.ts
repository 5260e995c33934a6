import { expect } from 'vitest';
import { plainBeard, readBeard } from '../../src/model/length/beard.ts';
import { fromFibrogram, type LengthDistribution } from '../../src/model/length/length-distribution.ts';
import { meanLengthMm, shortFibrePercent, upperQuartileMm } from '../../src/model/length/statistics.ts';

/** What a closed form is compared in, mm and percent; the beard by plain tangent theory from a start. */
function figures(lengths: LengthDistribution, startMm = 0) {
  const beard = readBeard(lengths, plainBeard(startMm));
  return {
    meanByNumber: meanLengthMm(lengths, 'number'),
    meanByWeight: meanLengthMm(lengths, 'weight'),
    upperQuartile: upperQuartileMm(lengths),
    shortByNumber: shortFibrePercent(lengths, 'number'),
    shortByWeight: shortFibrePercent(lengths, 'weight'),
    mean: beard.meanMm,
    upperHalfMean: beard.upperHalfMeanMm,
    uniformity: beard.uniformityPercent,
  };
}
export type Expected = Partial<Record<keyof ReturnType<typeof figures>, readonly [value: number, tolerance: number]>>;

/** Each expected figure within its tolerance. */
export function expectFigures(lengths: LengthDistribution, expected: Expected, startMm = 0): void {
  const actual = figures(lengths, startMm);
  for (const [name, [value, tolerance]] of Object.entries(expected)) {
    const found = actual[name as keyof Expected];
    expect(Math.abs(found - value), `${name} is ${found}, not ${value}`).toBeLessThanOrEqual(tolerance);
  }
}

/** A number within a tolerance of what it should be. */
export const expectWithin = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual}, not ${expected}`).toBeLessThanOrEqual(tolerance);

/** How many fibres there are. */
export const countOf = (lengths: LengthDistribution): number => lengths.reduce((sum, count) => sum + count, 0);

/** Every length from 0 to the longest equally frequent by number: the triangular array of the sorters. */
export const triangular = (longestMm: number) =>
  fromFibrogram((x) => (x < longestMm ? (longestMm - x) ** 2 / (2 * longestMm) : 0));
