import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBeard } from '../../src/model/length/beard.ts';
import { breakAtRandom, breakByLength } from '../../src/model/length/breakage.ts';
import { lengthsFromClassCard } from '../../src/model/length/class-card.ts';
import {
  blend,
  type LengthDistribution,
  lengthCount,
  normalised,
  totalLengthMm,
} from '../../src/model/length/length-distribution.ts';
import { removeByLength } from '../../src/model/length/removal.ts';
import { lengthExceededMm, meanLengthMm, shareBelow, shortFibrePercent } from '../../src/model/length/statistics.ts';
import { propertySeed, runs } from './runs.ts';

const settings = (full: number) => ({ seed: propertySeed, numRuns: runs(full) });
/** Any fibres at all: some thousand counts anywhere on the lattice. */
const anyLengths = fc
  .array(fc.tuple(fc.nat({ max: lengthCount - 1 }), fc.integer({ min: 1, max: 1000 })), { minLength: 1, maxLength: 40 })
  .map((places) => {
    const numbers = new Float64Array(lengthCount);
    for (const [place, count] of places) numbers[place] = numbers[place]! + count;
    return normalised(numbers);
  });
/** Breaks per mm, up to four times a saw stand. */
const theta = fc.integer({ min: 0, max: 13_000 }).map((n) => n / 1e6);

type Breaking = (lengths: LengthDistribution, thetaPerMm: number) => LengthDistribution;
const fibres = (lengths: LengthDistribution) => lengths.reduce((sum, count) => sum + count, 0);

/** Breaking keeps every millimetre, makes no negative number and never fewer fibres. */
const breakingKeepsLength = (breaking: Breaking) =>
  fc.assert(
    fc.property(anyLengths, theta, (lengths, thetaPerMm) => {
      const broken = breaking(lengths, thetaPerMm);
      expect(Math.abs(totalLengthMm(broken) - 1)).toBeLessThan(1e-12);
      expect(Math.min(...broken)).toBeGreaterThanOrEqual(-1e-15);
      expect(fibres(broken)).toBeGreaterThanOrEqual(fibres(lengths) * (1 - 1e-12));
    }),
    settings(2000),
  );

/** Breaking leaves no length statistic longer than it was. */
const breakingShortens = (breaking: Breaking) =>
  fc.assert(
    fc.property(anyLengths, theta, (lengths, thetaPerMm) => {
      const broken = breaking(lengths, thetaPerMm);
      expect(meanLengthMm(broken, 'weight')).toBeLessThanOrEqual(meanLengthMm(lengths, 'weight') + 1e-9);
      expect(shortFibrePercent(broken, 'weight')).toBeGreaterThanOrEqual(shortFibrePercent(lengths, 'weight') - 1e-9);
    }),
    settings(2000),
  );

describe('laws of breaking', () => {
  test('random: length is kept', () => breakingKeepsLength(breakAtRandom));
  test('by length: length is kept', () => breakingKeepsLength(breakByLength));
  test('random: nothing gets longer', () => breakingShortens(breakAtRandom));
  test('by length: nothing gets longer', () => breakingShortens(breakByLength));
  test('random: two machines are one with both their breaks, in either order', () => {
    fc.assert(
      fc.property(anyLengths, theta, theta, (lengths, first, second) => {
        const once = breakAtRandom(lengths, first + second);
        const twice = breakAtRandom(breakAtRandom(lengths, second), first);
        for (let i = 0; i < lengthCount; i++) expect(Math.abs(once[i]! - twice[i]!)).toBeLessThan(1e-12);
      }),
      settings(1000),
    );
  });
});

describe('laws of removal, blending and reading', () => {
  test('kept and removed make up what there was', () => {
    fc.assert(
      fc.property(anyLengths, fc.integer({ min: 1, max: 999 }), (lengths, thousandths) => {
        const { kept, removed, removedFraction } = removeByLength(
          lengths,
          (l) => (thousandths / 1000) * Math.exp(-l / 20),
        );
        for (let i = 0; i < lengthCount; i++) {
          const sum = kept[i]! * (1 - removedFraction) + removed[i]! * removedFraction;
          expect(Math.abs(sum - lengths[i]!)).toBeLessThan(1e-12);
        }
      }),
      settings(1000),
    );
  });
  test('short fibre and mean length by weight of a blend are means by share; 1/L(n) too', () => {
    fc.assert(
      fc.property(anyLengths, anyLengths, fc.integer({ min: 1, max: 99 }), (a, b, percent) => {
        const share = percent / 100;
        const mix = blend([
          { lengths: a, share },
          { lengths: b, share: 1 - share },
        ]);
        const averages = (statistic: (lengths: LengthDistribution) => number) => {
          const mean = share * statistic(a) + (1 - share) * statistic(b);
          expect(Math.abs(statistic(mix) - mean)).toBeLessThan(1e-9 * Math.max(1, mean));
        };
        averages((lengths) => shortFibrePercent(lengths, 'weight'));
        averages((lengths) => meanLengthMm(lengths, 'weight'));
        averages((lengths) => 1 / meanLengthMm(lengths, 'number'));
      }),
      settings(1000),
    );
  });
  test('means are ordered: by number <= by weight <= longest; the share below never falls with length', () => {
    fc.assert(
      fc.property(anyLengths, fc.integer({ min: 0, max: 650 }), fc.integer({ min: 0, max: 650 }), (lengths, p, q) => {
        const byWeight = meanLengthMm(lengths, 'weight');
        expect(meanLengthMm(lengths, 'number')).toBeLessThanOrEqual(byWeight + 1e-9);
        expect(byWeight).toBeLessThanOrEqual(lengthExceededMm(lengths, 0, 'weight') + 1e-9);
        const [low, high] = [Math.min(p, q) / 10, Math.max(p, q) / 10];
        expect(shareBelow(lengths, low, 'weight')).toBeLessThanOrEqual(shareBelow(lengths, high, 'weight') + 1e-12);
      }),
      settings(2000),
    );
  });
  test('any class card in reach reads back', () => {
    const length = fc.integer({ min: 2200, max: 3600 }).map((n) => n / 100);
    const uniformity = fc.integer({ min: 760, max: 865 }).map((n) => n / 10);
    fc.assert(
      fc.property(length, uniformity, (upperHalfMeanMm, uniformityPercent) => {
        const beard = readBeard(lengthsFromClassCard({ upperHalfMeanMm, uniformityPercent }).lengths);
        expect(Math.abs(beard.upperHalfMeanMm - upperHalfMeanMm)).toBeLessThan(0.005);
        expect(Math.abs(beard.uniformityPercent - uniformityPercent)).toBeLessThan(0.01);
      }),
      settings(500),
    );
  });
});

describe('each law is seen to fail', () => {
  test('on breaking that keeps the number of fibres and loses a piece', () => {
    expect(() =>
      breakingKeepsLength((lengths, t) => breakAtRandom(lengths, t).map((count) => count * (1 - t))),
    ).toThrow();
  });
  test('on breaking that loses a millionth of the longest fibres', () => {
    const wrong: Breaking = (lengths, t) =>
      breakByLength(lengths, t).map((count, i) => (i > 100 ? count * (1 - 1e-6) : count));
    expect(() => breakingKeepsLength(wrong)).toThrow();
  });
  test('on breaking that joins fibres end to end', () => {
    const wrong: Breaking = (lengths) => {
      const joined = new Float64Array(lengthCount);
      for (let i = 0; i < lengthCount; i++) joined[Math.min(lengthCount - 1, 2 * i + 1)]! += lengths[i]! / 2;
      return normalised(joined);
    };
    expect(() => breakingShortens(wrong)).toThrow();
  });
});
