import { describe, test } from 'vitest';
import { plainBeard, readBeard } from '../../src/model/length/beard.ts';
import { breakAtRandom, breakByLength } from '../../src/model/length/breakage.ts';
import { lengthsFromClassCard } from '../../src/model/length/class-card.ts';
import { machineBreakagePerMm } from '../../src/model/length/facts.ts';
import {
  blend,
  gaussianByMass,
  type LengthDistribution,
  stepMm,
  uniformLength,
} from '../../src/model/length/length-distribution.ts';
import { removeByLength, solveRemoval } from '../../src/model/length/removal.ts';
import { meanLengthMm } from '../../src/model/length/statistics.ts';
import { expectFigures, expectWithin, triangular } from './length-figures.ts';

/** Saw stand and two saw lint cleaners at 6 % lint moisture, with removal chance A (0.03 + e^(-l/6 mm)) of the cleaners' waste. */
function sawAndTwoCleaners(boll: LengthDistribution): LengthDistribution {
  const waste = (lengthMm: number, size: number) => size * (0.03 + Math.exp(-lengthMm / 6));
  let lengths = breakByLength(boll, machineBreakagePerMm.sawStand.value);
  for (const lossFraction of [0.02, 0.012]) {
    lengths = breakByLength(lengths, machineBreakagePerMm.sawLintCleaner.value);
    const size = solveRemoval(lengths, waste, lossFraction, [0, 1]);
    lengths = removeByLength(lengths, (lengthMm) => waste(lengthMm, size)).kept;
  }
  return lengths;
}
const inTheBoll = (centreMm: number, breaksPerMm: number) => breakAtRandom(gaussianByMass(centreMm, 0.16), breaksPerMm);
const mediumBale = sawAndTwoCleaners(inTheBoll(30.7, 0.0087));

describe('the calibrated cottons, regression on the calibration to published gin results (Armijo et al. 2019, Hughs et al. 2013)', () => {
  test('medium upland in the boll: UHML 29.14, UI 84.18, short 4.78 and 18.02, upper quartile 32.93, L(n) 23.80', () => {
    const boll = inTheBoll(30.7, 0.0087);
    const beard = readBeard(boll);
    expectWithin(beard.upperHalfMeanMm, 29.14, 0.01);
    expectWithin(beard.uniformityPercent, 84.18, 0.01);
    expectFigures(boll, {
      shortByWeight: [4.78, 0.01],
      shortByNumber: [18.02, 0.01],
      upperQuartile: [32.93, 0.01],
      meanByNumber: [23.8, 0.01],
    });
  });
  test('medium upland after saw stand and two lint cleaners: 28.19, 81.20, 8.69, 26.57, 31.33, 20.54', () => {
    const beard = readBeard(mediumBale);
    expectWithin(beard.upperHalfMeanMm, 28.19, 0.01);
    expectWithin(beard.uniformityPercent, 81.2, 0.01);
    expectFigures(mediumBale, {
      shortByWeight: [8.69, 0.01],
      shortByNumber: [26.57, 0.01],
      upperQuartile: [31.33, 0.01],
      meanByNumber: [20.54, 0.01],
    });
  });
  test('near the crop means of 2010-12, staple 35.5, and of 1998-2002, uniformity 81.3 (USDA)', () => {
    expectWithin(readBeard(mediumBale).upperHalfMeanMm, 28.2, 0.2);
    expectWithin(readBeard(mediumBale).uniformityPercent, 81.3, 0.4);
  });
  test('plain tangent theory would read uniformity 68.6 on that bale, scanned from 3.8 mm', () => {
    expectWithin(readBeard(mediumBale, plainBeard(3.8)).uniformityPercent, 68.6, 0.1);
  });
});

describe('removal and blending', () => {
  test.each([
    { feed: 'forward', cutMm: 12, sharp: 14.06, ramp: 14.19 },
    { feed: 'backward', cutMm: 16, sharp: 25, ramp: 25.13 },
  ])('ideal comber, triangular array 32 mm, detaching 14, feed 4 $feed — Gegauff (c/M)^2, from memory', (row) => {
    const noil = (width: number) =>
      100 *
      removeByLength(triangular(32), (l) => Math.min(1, Math.max(0, (row.cutMm + width / 2 - l) / width)))
        .removedFraction;
    // On the lattice a cut through a length takes half of it: the narrowest ramp.
    expectWithin(noil(1e-9 + stepMm / 1e6), row.sharp, 0.02);
    expectWithin(noil(4), row.ramp, 0.02);
  });
  test('half 20 mm and half 30 mm by mass: L(n) harmonic 24, L(w) 25', () => {
    const mix = blend([
      { lengths: uniformLength(20), share: 0.5 },
      { lengths: uniformLength(30), share: 0.5 },
    ]);
    expectFigures(mix, { meanByNumber: [24, 1e-9], meanByWeight: [25, 1e-9] });
  });
  test('half short and half long upland: short fibre and L(w) are mass means, L(n) harmonic; it classes longer, less uniform', () => {
    const short = sawAndTwoCleaners(inTheBoll(27.7, 0.015));
    const longStaple = sawAndTwoCleaners(inTheBoll(32.7, 0.0028));
    const mix = blend([
      { lengths: short, share: 1 },
      { lengths: longStaple, share: 1 },
    ]);
    expectFigures(mix, { shortByWeight: [9.15, 0.02], meanByWeight: [25.42, 0.02], meanByNumber: [20.15, 0.02] });
    expectWithin(
      meanLengthMm(mix, 'number'),
      2 / (1 / meanLengthMm(short, 'number') + 1 / meanLengthMm(longStaple, 'number')),
      1e-9,
    );
    const beard = readBeard(mix);
    expectWithin(beard.upperHalfMeanMm, 28.62, 0.02);
    expectWithin(beard.uniformityPercent, 79.8, 0.05);
  });
});

describe('a class card, regression on a two-number fit of the same family (derived)', () => {
  test.each([
    { card: [25.4, 80], centre: 27.43, breaks: 0.02339, short: 14.2, meanByWeight: 22.3, quartile: 28.0 },
    { card: [28.2, 79], centre: 30.67, breaks: 0.02396, short: 13.4, meanByWeight: 24.3, quartile: 30.9 },
    { card: [28.2, 81], centre: 30.27, breaks: 0.01801, short: 10.1, meanByWeight: 25.4, quartile: 31.3 },
    { card: [28.2, 83], centre: 29.9, breaks: 0.01226, short: 6.9, meanByWeight: 26.5, quartile: 31.7 },
    { card: [30.5, 82], centre: 32.54, breaks: 0.01396, short: 7.4, meanByWeight: 28.0, quartile: 34.1 },
    { card: [36, 86], centre: 37.59, breaks: 0.00322, short: 1.5, meanByWeight: 36.1, quartile: 41.1 },
  ])(
    'upper half mean $card.0 mm, uniformity $card.1',
    ({ card: [upperHalfMeanMm, uniformityPercent], centre, breaks, short, meanByWeight, quartile }) => {
      const card = { upperHalfMeanMm: upperHalfMeanMm!, uniformityPercent: uniformityPercent! };
      const fit = lengthsFromClassCard(card);
      expectWithin(fit.centreMm, centre, 0.02);
      expectWithin(fit.breaksPerMm, breaks, 0.0001);
      expectFigures(fit.lengths, {
        shortByWeight: [short, 0.06],
        meanByWeight: [meanByWeight, 0.06],
        upperQuartile: [quartile, 0.06],
      });
      const beard = readBeard(fit.lengths);
      expectWithin(beard.upperHalfMeanMm, card.upperHalfMeanMm, 0.02);
      expectWithin(beard.uniformityPercent, card.uniformityPercent, 0.05);
    },
  );
  test('mean length 0.90 in on an upper half mean of 1.11 in is a uniformity of 81.1 (definition of the uniformity index)', () => {
    const { lengths } = lengthsFromClassCard({ upperHalfMeanMm: 1.11 * 25.4, uniformityPercent: (100 * 0.9) / 1.11 });
    const beard = readBeard(lengths);
    expectWithin(beard.meanMm / 25.4, 0.9, 0.001);
    expectWithin(beard.uniformityPercent, 81.1, 0.05);
  });
});
