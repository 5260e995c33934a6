import { describe, expect, test } from 'vitest';
import { breakAtRandom, breakByLength } from '../../src/model/length/breakage.ts';
import {
  fromFibrogram,
  gaussianByMass,
  type LengthDistribution,
  lengthAtMm,
  lengthCount,
  normalised,
  shortBelowMm,
  stepMm,
  totalLengthMm,
  uniformLength,
} from '../../src/model/length/length-distribution.ts';
import {
  lengthExceededMm,
  lengthVariationPercent,
  meanLengthMm,
  shareBelow,
  shortFibrePercent,
} from '../../src/model/length/statistics.ts';
import { openStream } from '../../src/model/random.ts';
import { long } from '../laws/runs.ts';
import { countOf, type Expected, expectFigures, expectWithin, triangular } from './length-figures.ts';

/** The fibrogram at a lattice node: how much fibre lies beyond it. */
function fibrogramAt(lengths: LengthDistribution, node: number): number {
  let sum = 0;
  for (let i = node; i < lengthCount; i++) sum += lengths[i]! * (lengthAtMm(i) - node * stepMm);
  return sum;
}

const exponential = (meanMm: number) => fromFibrogram((x) => meanMm * Math.exp(-x / meanMm));

/** Weibull's law through its fibrogram, by Simpson's rule on the survivors: no special function is needed. */
function weibull(shape: number, scaleMm: number): LengthDistribution {
  const end = 5 * scaleMm;
  const survivors = (x: number) => Math.exp(-((x / scaleMm) ** shape));
  return fromFibrogram((x) => {
    if (x >= end) return 0;
    const parts = 400;
    let sum = survivors(x) + survivors(end);
    for (let i = 1; i < parts; i++) sum += (i % 2 === 1 ? 4 : 2) * survivors(x + (i * (end - x)) / parts);
    return (sum * (end - x)) / parts / 3;
  });
}

describe('closed forms of the fibrogram (Hertel 1940) and of the length definitions (ASTM D1440, D5867)', () => {
  test.each([0, 3.8, 10])(
    'all fibres 28 mm, scanned from %d mm: every mean 28, uniformity 100, no short fibre',
    (start) => {
      const same: readonly [number, number] = [28, 1e-9];
      expectFigures(
        uniformLength(28),
        {
          meanByNumber: same,
          meanByWeight: same,
          mean: same,
          upperHalfMean: same,
          uniformity: [100, 1e-9],
          upperQuartile: [28, stepMm / 2],
          shortByNumber: [0, 0],
          shortByWeight: [0, 0],
        },
        start,
      );
    },
  );
  test('uniform 0 to 32 mm by number: L/2, 2L/3, L sqrt(3)/2, s/L, (s/L)^2, tangents 0.853553 L and 58.579', () => {
    expectFigures(triangular(32), {
      meanByNumber: [16, 0.15],
      meanByWeight: [64 / 3, 0.01],
      upperQuartile: [16 * Math.sqrt(3), 0.01],
      shortByNumber: [(100 * shortBelowMm) / 32, 0.5],
      shortByWeight: [100 * (shortBelowMm / 32) ** 2, 0.01],
      upperHalfMean: [0.853553 * 32, 0.02],
      uniformity: [58.579, 0.5],
    });
  });
  test('uniform 0 to 32 mm, scanned from x0 = 3.8 mm: (L + x0)/2 and x0 + 0.853553 (L - x0)', () => {
    expectFigures(triangular(32), { mean: [17.9, 0.02], upperHalfMean: [27.87, 0.02], uniformity: [64.23, 0.02] }, 3.8);
  });
  test('exponential, mean 6 mm: 2.692635 a, 1 - e^(-s/a), 1 - (1 + s/a) e^(-s/a); tangents from 3.8 mm', () => {
    expectFigures(
      exponential(6),
      {
        upperQuartile: [2.692635 * 6, 0.03],
        shortByNumber: [87.96, 0.6],
        shortByWeight: [62.47, 0.03],
        mean: [9.8, 0.03],
        upperHalfMean: [3.8 + 2.678347 * 6, 0.03],
      },
      3.8,
    );
  });
  // 0.27 % of its weight lies beyond the lattice's 65 mm; that takes 0.15 mm off L(w), 0.08 off the quartile, and adds 0.13 to the short.
  // Fibres below a quarter millimetre, h/2a of the number, have no place on it: that takes 0.64 off the short by number.
  test('exponential, mean 8 mm: 2a, 2.692635 a, short fibre', () => {
    expectFigures(exponential(8), {
      meanByWeight: [16, 0.16],
      upperQuartile: [21.541, 0.09],
      shortByNumber: [79.56, 0.64],
      shortByWeight: [47.1, 0.14],
    });
  });
  const weibullCases: { shape: number; scaleMm: number; expected: Expected }[] = [
    {
      shape: 2.5,
      scaleMm: 22,
      expected: {
        meanByNumber: [19.52, 0.01],
        meanByWeight: [23.094, 0.01],
        upperQuartile: [28.58, 0.01],
        shortByNumber: [22.37, 0.01],
        shortByWeight: [10.17, 0.01],
        mean: [19.73, 0.01],
        upperHalfMean: [29.456, 0.01],
        uniformity: [66.98, 0.01],
      },
    },
    {
      shape: 3.5,
      scaleMm: 25,
      expected: {
        meanByNumber: [22.494, 0.01],
        meanByWeight: [24.746, 0.01],
        upperQuartile: [29.442, 0.01],
        shortByNumber: [8.92, 0.01],
        shortByWeight: [3.89, 0.01],
        mean: [22.52, 0.01],
        upperHalfMean: [30.015, 0.01],
        uniformity: [75.03, 0.01],
      },
    },
  ];
  test.each(weibullCases)(
    'Weibull, shape $shape, scale $scaleMm mm: gamma-function forms; tangents from 3.8 mm',
    (row) => {
      expectFigures(weibull(row.shape, row.scaleMm), row.expected, 3.8);
    },
  );
});

describe('a sorted sample — Morton & Hearle, Physical Properties of Textile Fibres, table 4.2', () => {
  const frequencies = [1, 3, 6, 11, 19, 27, 23, 9, 1];
  const numbers = new Float64Array(lengthCount);
  for (const [k, frequency] of frequencies.entries()) numbers[(3 + 2 * k) / stepMm - 1] = frequency;
  const sample = normalised(numbers);
  test('100 fibres, 1236 mm in all; mean 12.36, standard deviation 3.148, mean by weight 13.162', () => {
    expectWithin(totalLengthMm(numbers), 1236, 1e-9);
    expectWithin(countOf(sample) * 1236, 100, 1e-9);
    expectWithin(meanLengthMm(sample, 'number'), 12.36, 1e-9);
    expectWithin((lengthVariationPercent(sample, 'number') / 100) * 12.36, 3.148, 5e-4);
    expectWithin(meanLengthMm(sample, 'weight'), 13.162, 5e-4);
  });
  test('cumulated length 1236 1233 1218 1176 1077 868 517 172 19', () => {
    const beyond = frequencies.map((_, k) => 1236 * (1 - shareBelow(sample, 2 + 2 * k, 'weight')));
    for (const [k, value] of [1236, 1233, 1218, 1176, 1077, 868, 517, 172, 19].entries()) {
      expectWithin(beyond[k]!, value, 1e-9);
    }
  });
});

test('effective length of a triangular array, longest 32 mm: 27.5, with 43.75 % short — Clegg construction, from memory', () => {
  const array = triangular(32);
  const length = (share: number) => lengthExceededMm(array, share, 'number');
  const place = (lengthMm: number) => 1 - shareBelow(array, lengthMm, 'number');
  const longest = 32;
  const k = length(place(longest / 2) / 4);
  const base = place(k / 2);
  expectWithin(length(base / 4), 0.859375 * longest, stepMm / 2);
  expectWithin(100 * (1 - base), 43.75, 0.5);
});

describe('random scission, exact law (Krapivsky, Redner, Ben-Naim, fragmentation): F(x) becomes e^(-theta x) F(x)', () => {
  const cottons = { triangular: triangular(32), exponential: exponential(8), medium: gaussianByMass(30.7, 0.16) };
  test.each(Object.entries(cottons))(
    '%s, theta 0.02: fibrogram at every node, total length unchanged',
    (_name, lengths) => {
      const broken = breakAtRandom(lengths, 0.02);
      expectWithin(totalLengthMm(broken), 1, 1e-12);
      for (let node = 0; node < lengthCount; node++) {
        expectWithin(fibrogramAt(broken, node), Math.exp(-0.02 * node * stepMm) * fibrogramAt(lengths, node), 1e-12);
      }
    },
  );
  test('all 28 mm, theta 0.01: number x1.28, L(n) 21.875, L(w) 25.560, short 20.67 and 5.82, unbroken 0.7558 of mass', () => {
    const before = uniformLength(28);
    const broken = breakAtRandom(before, 0.01);
    expectWithin(countOf(broken) / countOf(before), 1.28, 1.28 * 0.005);
    expectFigures(broken, {
      meanByNumber: [21.875, 21.875 * 0.005],
      meanByWeight: [25.56, 0.01],
      shortByNumber: [20.67, 0.4],
      shortByWeight: [5.82, 0.01],
    });
    const unbroken = broken[28 / stepMm - 1]! * 28;
    expectWithin(unbroken, 0.7558, 0.01 * 0.7558);
    expectWithin(unbroken / 28 / countOf(broken), 0.5905, 0.01 * 0.5905);
  });
  test('all 28 mm, theta 0.02, against cuts drawn fibre by fibre: number x1.56, L(w) 23.430, short 35.06 and 11.67', () => {
    const random = openStream(20250711, 'gin');
    const fibres = long ? 400_000 : 40_000;
    const tolerance = long ? 1 : Math.sqrt(10);
    let pieces = 0;
    let shortPieces = 0;
    let squares = 0;
    let shortLength = 0;
    const addPiece = (piece: number) => {
      pieces++;
      squares += piece * piece;
      if (piece < shortBelowMm) shortPieces++;
      if (piece < shortBelowMm) shortLength += piece;
    };
    for (let fibre = 0; fibre < fibres; fibre++) {
      // Cuts of a Poisson process come after exponential gaps.
      const gap = () => -Math.log(1 - random.uniform()) / 0.02;
      let from = 0;
      for (let cut = gap(); cut < 28; cut += gap()) {
        addPiece(cut - from);
        from = cut;
      }
      addPiece(28 - from);
    }
    const drawn = {
      number: pieces / fibres,
      meanByWeight: squares / (28 * fibres),
      shortByNumber: (100 * shortPieces) / pieces,
      shortByWeight: (100 * shortLength) / (28 * fibres),
    };
    expectWithin(drawn.number, 1.56, 0.0025 * tolerance);
    const broken = breakAtRandom(uniformLength(28), 0.02);
    expectWithin(countOf(broken) * 28, drawn.number, 0.016);
    expectFigures(broken, {
      meanByWeight: [drawn.meanByWeight, 0.03 * tolerance],
      shortByNumber: [drawn.shortByNumber, 0.6 + 0.15 * tolerance],
      shortByWeight: [drawn.shortByWeight, 0.06 * tolerance],
    });
    expectFigures(broken, { meanByWeight: [23.43, 0.01], shortByWeight: [11.67, 0.01] });
  });
  test('exponential, mean 8, theta 0.05 stays exponential with mean a/(1 + theta a) = 5.714, L(w) 11.429', () => {
    const broken = breakAtRandom(exponential(8), 0.05);
    expectFigures(broken, { meanByNumber: [8 / 1.4, stepMm / 2], meanByWeight: [16 / 1.4, 0.05] });
  });
  test('uniform 0 to 32, theta 0.02: number x1.32, L(n) 12.121, L(w) 18.314, short 57.72 and 27.48', () => {
    const before = triangular(32);
    const broken = breakAtRandom(before, 0.02);
    expectWithin(countOf(broken) / countOf(before), 1.32, 1.32 * 0.01);
    expectFigures(broken, {
      meanByNumber: [12.121, 0.2],
      meanByWeight: [18.314, 0.02],
      shortByNumber: [57.72, 0.7],
      shortByWeight: [27.48, 0.02],
    });
  });
  test('ten steps of 0.001 are one of 0.010', () => {
    let inSteps: LengthDistribution = gaussianByMass(30.7, 0.16);
    for (let i = 0; i < 10; i++) inSteps = breakAtRandom(inSteps, 0.001);
    const atOnce = breakAtRandom(gaussianByMass(30.7, 0.16), 0.01);
    for (let i = 0; i < lengthCount; i++) expectWithin(inSteps[i]!, atOnce[i]!, 1e-12);
  });
  test('50,000 steps of 1e-7 keep the total length to 1e-11 and every number at or above zero', () => {
    let lengths: LengthDistribution = triangular(32);
    for (let i = 0; i < 50_000; i++) lengths = breakAtRandom(lengths, 1e-7);
    expectWithin(totalLengthMm(lengths), 1, 1e-11);
    expect(Math.min(...lengths)).toBeGreaterThanOrEqual(0);
  });
  test('small theta: dSFC(w)/dtheta = s^2 S(s)/M1 and dL(w)/dtheta = -M3/(3 M1)', () => {
    const before = gaussianByMass(28, 0.25);
    const theta = 1e-6;
    const broken = breakAtRandom(before, theta);
    const survivors = countOf(before) * (1 - shareBelow(before, shortBelowMm, 'number'));
    const slopeOfShort = (shortFibrePercent(broken, 'weight') - shortFibrePercent(before, 'weight')) / 100 / theta;
    expectWithin(slopeOfShort / (shortBelowMm ** 2 * survivors), 1, 0.001);
    const thirdMoment = before.reduce((sum, count, i) => sum + count * lengthAtMm(i) ** 3, 0);
    const slopeOfMean = (meanLengthMm(broken, 'weight') - meanLengthMm(before, 'weight')) / theta;
    expectWithin(slopeOfMean / (-thirdMoment / 3), 1, 0.001);
  });
});

test.each([0.0033, 0.02, 0.2])(
  'breakage by length^2.5, theta %d: total length kept to 1e-14 a step (conservation)',
  (theta) => {
    expectWithin(totalLengthMm(breakByLength(gaussianByMass(30.7, 0.16), theta)), 1, 2e-14);
  },
);
