import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BeardModel,
  type BeardReading,
  classingBeard,
  plainBeard,
  readBeard,
} from '../../src/model/length/beard.ts';
import { breakAtRandom, breakByLength } from '../../src/model/length/breakage.ts';
import { lengthsFromClassCard } from '../../src/model/length/class-card.ts';
import {
  blend,
  type LengthDistribution,
  lengthAtMm,
  lengthCount,
  normalised,
  totalLengthMm,
  uniformLength,
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
const parts = fc.integer({ min: 1, max: 1000 }).map((n) => n / 100);
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

/** Two machines one after the other break as one with the breaks of both. */
const machinesAddUp = (breaking: Breaking) =>
  fc.assert(
    fc.property(anyLengths, theta, theta, (lengths, first, second) => {
      const once = breaking(lengths, first + second);
      const twice = breaking(breaking(lengths, second), first);
      for (let i = 0; i < lengthCount; i++) expect(Math.abs(once[i]! - twice[i]!)).toBeLessThan(1e-12);
    }),
    settings(1000),
  );

describe('laws of breaking', () => {
  test('random: length is kept', () => breakingKeepsLength(breakAtRandom));
  test('by length: length is kept', () => breakingKeepsLength(breakByLength));
  test('random: nothing gets longer', () => breakingShortens(breakAtRandom));
  test('by length: nothing gets longer', () => breakingShortens(breakByLength));
  test('random: two machines are one with both their breaks, in either order', () => machinesAddUp(breakAtRandom));
});

/** The fibrogram at each lattice length, straight from its definition: the length beyond x of all fibres longer than x. */
const fibrogramOf = (lengths: LengthDistribution): number[] =>
  Array.from({ length: lengthCount }, (_, i) =>
    lengths.reduce((sum, count, k) => sum + count * Math.max(0, lengthAtMm(k) - lengthAtMm(i)), 0),
  );
/** Random scission multiplies the fibrogram by e^(-theta x): no stretch of length x survives with a break in it. */
const scissionIsExact = (breaking: Breaking) =>
  fc.assert(
    fc.property(anyLengths, theta, (lengths, thetaPerMm) => {
      const before = fibrogramOf(lengths);
      const after = fibrogramOf(breaking(lengths, thetaPerMm));
      for (let i = 0; i < lengthCount; i++) {
        expect(Math.abs(after[i]! - before[i]! * Math.exp(-thetaPerMm * lengthAtMm(i)))).toBeLessThan(1e-12);
      }
    }),
    settings(200),
  );
test('random scission is its closed form at every length', () => scissionIsExact(breakAtRandom));

/** Fibres that a clamp can hold: any at all, some of them long enough to reach past it. */
const clampable = fc
  .tuple(anyLengths, fc.integer({ min: 30, max: lengthCount - 1 }), fc.integer({ min: 1, max: 100 }))
  .map(([some, place, percent]) =>
    blend([
      { lengths: some, share: 1 - percent / 100 },
      { lengths: uniformLength(lengthAtMm(place)), share: percent / 100 },
    ]),
  );
type Reading = (lengths: LengthDistribution) => BeardReading;
const beards = [classingBeard, plainBeard(0), plainBeard(3.8)];
const reading =
  (model: BeardModel): Reading =>
  (lengths) =>
    readBeard(lengths, model);

/** The longer half is at least as long as the whole, and no longer than the longest fibre looks. */
const upperHalfIsLonger = (read: Reading, scale: number) =>
  fc.assert(
    fc.property(clampable, (lengths) => {
      const { meanMm, upperHalfMeanMm, uniformityPercent } = read(lengths);
      expect(upperHalfMeanMm).toBeGreaterThanOrEqual(meanMm * (1 - 1e-9));
      expect(upperHalfMeanMm).toBeLessThanOrEqual(scale * lengthExceededMm(lengths, 0, 'weight') + 1e-9);
      expect(uniformityPercent).toBeLessThanOrEqual(100 + 1e-7);
    }),
    settings(1000),
  );

/** Fibres all of one length read that length on the instrument's scale, and a uniformity of 100. */
const equalFibresReadFull = (read: Reading, scale: number) =>
  fc.assert(
    fc.property(fc.integer({ min: 12, max: lengthCount - 1 }), (place) => {
      const { upperHalfMeanMm, uniformityPercent } = read(uniformLength(lengthAtMm(place)));
      expect(Math.abs(uniformityPercent - 100)).toBeLessThan(1e-7);
      expect(Math.abs(upperHalfMeanMm - scale * lengthAtMm(place))).toBeLessThan(1e-7);
    }),
    settings(500),
  );

describe('laws of the beard', () => {
  test('the upper half mean is never below the mean', () => {
    for (const model of beards) upperHalfIsLonger(reading(model), model.lengthScale);
  });
  test('a bundle of equal fibres reads uniformity 100', () => {
    for (const model of beards) equalFibresReadFull(reading(model), model.lengthScale);
  });
});

/** Mixing in two steps is mixing at once, whichever two go first. */
const blendingIsAssociative = (mix: typeof blend) =>
  fc.assert(
    fc.property(anyLengths, anyLengths, anyLengths, fc.tuple(parts, parts, parts), (a, b, c, [p, q, r]) => {
      const once = mix([
        { lengths: a, share: p },
        { lengths: b, share: q },
        { lengths: c, share: r },
      ]);
      const left = mix([
        {
          lengths: mix([
            { lengths: a, share: p },
            { lengths: b, share: q },
          ]),
          share: p + q,
        },
        { lengths: c, share: r },
      ]);
      const right = mix([
        { lengths: a, share: p },
        {
          lengths: mix([
            { lengths: b, share: q },
            { lengths: c, share: r },
          ]),
          share: q + r,
        },
      ]);
      for (let i = 0; i < lengthCount; i++) {
        expect(Math.abs(left[i]! - once[i]!)).toBeLessThan(1e-12);
        expect(Math.abs(right[i]! - once[i]!)).toBeLessThan(1e-12);
      }
    }),
    settings(500),
  );
test('blending is associative', () => blendingIsAssociative(blend));

/** What is kept and what is removed make up what there was, fibre for fibre. */
const keptAndRemovedAddUp = (remove: typeof removeByLength) =>
  fc.assert(
    fc.property(anyLengths, fc.integer({ min: 1, max: 999 }), (lengths, thousandths) => {
      const { kept, removed, removedFraction } = remove(lengths, (l) => (thousandths / 1000) * Math.exp(-l / 20));
      for (let i = 0; i < lengthCount; i++) {
        const sum = kept[i]! * (1 - removedFraction) + removed[i]! * removedFraction;
        expect(Math.abs(sum - lengths[i]!)).toBeLessThan(1e-12);
      }
    }),
    settings(1000),
  );

/** Statistics by weight of a blend are means by share. */
const blendIsMeanByShare = (mixing: typeof blend) =>
  fc.assert(
    fc.property(anyLengths, anyLengths, fc.integer({ min: 1, max: 99 }), (a, b, percent) => {
      const share = percent / 100;
      const mix = mixing([
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

/** Means are ordered, and the share below a length never falls with it. */
const meansAreOrdered = (mean: typeof meanLengthMm, below: typeof shareBelow) =>
  fc.assert(
    fc.property(anyLengths, fc.integer({ min: 0, max: 650 }), fc.integer({ min: 0, max: 650 }), (lengths, p, q) => {
      const byWeight = mean(lengths, 'weight');
      expect(mean(lengths, 'number')).toBeLessThanOrEqual(byWeight + 1e-9);
      expect(byWeight).toBeLessThanOrEqual(lengthExceededMm(lengths, 0, 'weight') + 1e-9);
      const [low, high] = [Math.min(p, q) / 10, Math.max(p, q) / 10];
      expect(below(lengths, low, 'weight')).toBeLessThanOrEqual(below(lengths, high, 'weight') + 1e-12);
    }),
    settings(2000),
  );

/** Lengths made from a class card read on the instrument as the card says. */
const cardReadsBack = (
  fromCard: (card: { upperHalfMeanMm: number; uniformityPercent: number }) => LengthDistribution,
) =>
  fc.assert(
    fc.property(
      fc.integer({ min: 2200, max: 3600 }).map((n) => n / 100),
      fc.integer({ min: 760, max: 865 }).map((n) => n / 10),
      (upperHalfMeanMm, uniformityPercent) => {
        const beard = readBeard(fromCard({ upperHalfMeanMm, uniformityPercent }));
        expect(Math.abs(beard.upperHalfMeanMm - upperHalfMeanMm)).toBeLessThan(0.005);
        expect(Math.abs(beard.uniformityPercent - uniformityPercent)).toBeLessThan(0.01);
      },
    ),
    settings(500),
  );

describe('laws of removal, blending and reading', () => {
  test('kept and removed make up what there was', () => keptAndRemovedAddUp(removeByLength));
  test('short fibre and mean length by weight of a blend are means by share; 1/L(n) too', () =>
    blendIsMeanByShare(blend));
  test('means are ordered: by number <= by weight <= longest; the share below never falls with length', () =>
    meansAreOrdered(meanLengthMm, shareBelow));
  test('any class card in reach reads back', () => cardReadsBack((card) => lengthsFromClassCard(card).lengths));
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
  test('on scission that spares short fibres', () => {
    expect(() => scissionIsExact((lengths, t) => breakByLength(lengths, t, 1.1))).toThrow();
  });
  test('on scission a thousandth too strong', () => {
    expect(() => scissionIsExact((lengths, t) => breakAtRandom(lengths, t * 1.001))).toThrow();
  });
  test('on a beard whose tangents were swapped', () => {
    const swapped: Reading = (lengths) => {
      const { meanMm, upperHalfMeanMm } = readBeard(lengths);
      return { meanMm: upperHalfMeanMm, upperHalfMeanMm: meanMm, uniformityPercent: (100 * meanMm) / upperHalfMeanMm };
    };
    expect(() => upperHalfIsLonger(swapped, classingBeard.lengthScale)).toThrow();
  });
  test('on a beard read from the clamp while its scan starts further out', () => {
    const offset: Reading = (lengths) => {
      const read = readBeard(lengths);
      const meanMm = read.meanMm - classingBeard.startMm / 100;
      return { ...read, meanMm, uniformityPercent: (100 * meanMm) / read.upperHalfMeanMm };
    };
    expect(() => equalFibresReadFull(offset, classingBeard.lengthScale)).toThrow();
  });
  test('on blending that goes by the number of lots', () => {
    const even: typeof blend = (components) => blend(components.map(({ lengths }) => ({ lengths, share: 1 })));
    expect(() => blendingIsAssociative(even)).toThrow();
  });
  test('on breaking that joins fibres end to end', () => {
    const wrong: Breaking = (lengths) => {
      const joined = new Float64Array(lengthCount);
      for (let i = 0; i < lengthCount; i++) joined[Math.min(lengthCount - 1, 2 * i + 1)]! += lengths[i]! / 2;
      return normalised(joined);
    };
    expect(() => breakingShortens(wrong)).toThrow();
  });
  test('on breaking that is done twice where a machine should do it once', () => {
    expect(() => machinesAddUp((lengths, t) => breakAtRandom(lengths, t + 1e-4))).toThrow();
  });
  test('on removal that counts a thousandth more than it took', () => {
    const greedy: typeof removeByLength = (lengths, probability) => {
      const taken = removeByLength(lengths, probability);
      return { ...taken, removedFraction: taken.removedFraction * 1.001 };
    };
    expect(() => keptAndRemovedAddUp(greedy)).toThrow();
  });
  test('on a blend that gives every lot the same share', () => {
    const even: typeof blend = (components) => blend(components.map(({ lengths }) => ({ lengths, share: 1 })));
    expect(() => blendIsMeanByShare(even)).toThrow();
  });
  test('on means by number and by weight that were swapped, and on a share counted from the longest', () => {
    const swapped: typeof meanLengthMm = (lengths, by) => meanLengthMm(lengths, by === 'weight' ? 'number' : 'weight');
    expect(() => meansAreOrdered(swapped, shareBelow)).toThrow();
    const above: typeof shareBelow = (...asked) => 1 - shareBelow(...asked);
    expect(() => meansAreOrdered(meanLengthMm, above)).toThrow();
  });
  test('on lengths made from a card a thousandth too long', () => {
    expect(() =>
      cardReadsBack((card) => lengthsFromClassCard({ ...card, upperHalfMeanMm: card.upperHalfMeanMm * 1.001 }).lengths),
    ).toThrow();
  });
});
