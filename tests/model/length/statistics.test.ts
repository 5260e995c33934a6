import { mean, quantileSorted, standardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { lengthAtMm, lengthCount, normalised, stepMm } from '../../../src/model/length/length-distribution.ts';
import {
  lengthArrayMm,
  lengthExceededMm,
  lengthVariationPercent,
  meanLengthMm,
  shareBelow,
  shortFibrePercent,
  upperQuartileMm,
} from '../../../src/model/length/statistics.ts';
import { openStream } from '../../../src/model/random.ts';

/** Fibres drawn one by one on the lattice, and the same fibres as a distribution. */
function drawnFibres() {
  const random = openStream(7, 'field');
  const places = Array.from({ length: 4000 }, () =>
    Math.min(lengthCount - 1, Math.max(0, Math.round(46 + 14 * random.normal()))),
  );
  const numbers = new Float64Array(lengthCount);
  for (const place of places) numbers[place] = numbers[place]! + 1;
  return { fibresMm: places.map(lengthAtMm).sort((a, b) => a - b), lengths: normalised(numbers) };
}
const { fibresMm, lengths } = drawnFibres();
/** The fibres again, each as often as it has half millimetres: a sample by weight. */
const byWeightMm = fibresMm.flatMap((mm) => Array<number>(mm / stepMm).fill(mm));

describe('against the package simple-statistics, on the same fibres one by one', () => {
  test.each([
    ['number', fibresMm],
    ['weight', byWeightMm],
  ] as const)('mean, variation and quantiles by %s', (by, sample) => {
    expect(meanLengthMm(lengths, by)).toBeCloseTo(mean(sample as number[]), 9);
    expect(lengthVariationPercent(lengths, by)).toBeCloseTo(
      (100 * standardDeviation(sample as number[])) / mean(sample as number[]),
      9,
    );
    for (const share of [0.05, 0.25, 0.5, 0.75, 0.95]) {
      const quantile = quantileSorted(sample as number[], 1 - share);
      expect(Math.abs(lengthExceededMm(lengths, share, by) - quantile)).toBeLessThanOrEqual(stepMm / 2 + 1e-9);
    }
  });
  test('share below a length half way between two lattice lengths is a plain count', () => {
    for (const lengthMm of [10.25, 12.75, 20.25, 31.75]) {
      const count = fibresMm.filter((mm) => mm < lengthMm).length;
      expect(shareBelow(lengths, lengthMm, 'number')).toBeCloseTo(count / fibresMm.length, 12);
    }
  });
});

test('the share below rises from 0 to 1 and undoes the length exceeded', () => {
  expect(shareBelow(lengths, 0, 'number')).toBe(0);
  expect(shareBelow(lengths, 100, 'weight')).toBeCloseTo(1, 12);
  for (const share of [0.1, 0.37, 0.5, 0.9]) {
    expect(1 - shareBelow(lengths, lengthExceededMm(lengths, share, 'weight'), 'weight')).toBeCloseTo(share, 9);
  }
});

test('short fibre by number exceeds short fibre by weight, and the upper quartile is exceeded by a quarter of the weight', () => {
  expect(shortFibrePercent(lengths, 'number')).toBeGreaterThan(shortFibrePercent(lengths, 'weight'));
  expect(upperQuartileMm(lengths)).toBe(lengthExceededMm(lengths, 0.25, 'weight'));
});

test('the length array lies in falling order, and its mean is the mean by number', () => {
  const array = lengthArrayMm(lengths, 500);
  expect(array).toEqual([...array].sort((a, b) => b - a));
  expect(mean(array)).toBeCloseTo(meanLengthMm(lengths, 'number'), 1);
});
