import { expect, test } from 'vitest';
import { readBeard } from '../../../src/model/length/beard.ts';
import { lengthsFromClassCard } from '../../../src/model/length/class-card.ts';
import { totalLengthMm } from '../../../src/model/length/length-distribution.ts';
import { meanLengthMm, shortFibrePercent, upperQuartileMm } from '../../../src/model/length/statistics.ts';

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

// Recorded from a fit by hand, so that a change of the family is noticed.
test.each([
  { card: [25.4, 80], centre: 27.43, breaks: 0.02339, short: 14.2, meanByWeight: 22.3, quartile: 28.0 },
  { card: [28.2, 79], centre: 30.67, breaks: 0.02396, short: 13.4, meanByWeight: 24.3, quartile: 30.9 },
  { card: [28.2, 81], centre: 30.27, breaks: 0.01801, short: 10.1, meanByWeight: 25.4, quartile: 31.3 },
  { card: [28.2, 83], centre: 29.9, breaks: 0.01226, short: 6.9, meanByWeight: 26.5, quartile: 31.7 },
  { card: [30.5, 82], centre: 32.54, breaks: 0.01396, short: 7.4, meanByWeight: 28.0, quartile: 34.1 },
  { card: [36, 86], centre: 37.59, breaks: 0.00322, short: 1.5, meanByWeight: 36.1, quartile: 41.1 },
] as const)('upper half mean $card.0 mm, uniformity $card.1 %: what the fit gave', (row) => {
  const [upperHalfMeanMm, uniformityPercent] = row.card;
  const fit = lengthsFromClassCard({ upperHalfMeanMm, uniformityPercent });
  const off = (value: number, recorded: number) => Math.abs(value - recorded);
  expect(off(fit.centreMm, row.centre)).toBeLessThan(0.02);
  expect(off(fit.breaksPerMm, row.breaks)).toBeLessThan(0.0001);
  expect(off(shortFibrePercent(fit.lengths, 'weight'), row.short)).toBeLessThan(0.06);
  expect(off(meanLengthMm(fit.lengths, 'weight'), row.meanByWeight)).toBeLessThan(0.06);
  expect(off(upperQuartileMm(fit.lengths), row.quartile)).toBeLessThan(0.06);
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
