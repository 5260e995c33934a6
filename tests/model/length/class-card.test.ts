import { expect, test } from 'vitest';
import { readBeard } from '../../../src/model/length/beard.ts';
import { lengthsFromClassCard } from '../../../src/model/length/class-card.ts';
import { totalLengthMm } from '../../../src/model/length/length-distribution.ts';
import { shortFibrePercent } from '../../../src/model/length/statistics.ts';

test.each([
  ['upland', 25, 79],
  ['upland', 29.5, 83],
  ['upland', 24, 72],
  ['pima', 36.3, 86.3],
  ['pima', 37, 88],
] as const)('%s: what is read from the fitted lengths is the card, %d mm and %d %%', (kind, length, uniformity) => {
  const { lengths } = lengthsFromClassCard({ upperHalfMeanMm: length, uniformityPercent: uniformity }, kind);
  const beard = readBeard(lengths);
  expect(beard.upperHalfMeanMm).toBeCloseTo(length, 3);
  expect(beard.uniformityPercent).toBeCloseTo(uniformity, 2);
  expect(totalLengthMm(lengths)).toBeCloseTo(1, 12);
});

test('at one length a less uniform bale holds more short fibre, and was broken more', () => {
  const fits = [85, 83, 81, 79].map((uniformityPercent) =>
    lengthsFromClassCard({ upperHalfMeanMm: 28.2, uniformityPercent }),
  );
  const short = fits.map(({ lengths }) => shortFibrePercent(lengths, 'weight'));
  expect(short).toEqual([...short].sort((a, b) => a - b));
  expect(fits.map(({ breaksPerMm }) => breaksPerMm)).toEqual(
    fits.map(({ breaksPerMm }) => breaksPerMm).sort((a, b) => a - b),
  );
});

test('a card out of reach gives the nearest cotton: unbroken above, broken to the limit below', () => {
  const best = lengthsFromClassCard({ upperHalfMeanMm: 28.2, uniformityPercent: 99 });
  expect(best.breaksPerMm).toBe(0);
  expect(readBeard(best.lengths).upperHalfMeanMm).toBeCloseTo(28.2, 3);
  const worst = lengthsFromClassCard({ upperHalfMeanMm: 28.2, uniformityPercent: 10 });
  expect(readBeard(worst.lengths).uniformityPercent).toBeLessThan(70);
  expect(readBeard(worst.lengths).upperHalfMeanMm).toBeCloseTo(28.2, 1);
});
