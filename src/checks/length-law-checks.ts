import { breakAtRandom } from '../model/length/breakage.ts';
import { blend, type LengthDistribution, stepMm, uniformLength } from '../model/length/length-distribution.ts';
import { removeByLength } from '../model/length/removal.ts';
import {
  lengthExceededMm,
  lengthVariationPercent,
  meanLengthMm,
  shareBelow,
  shortFibrePercent,
} from '../model/length/statistics.ts';
import type { Check, CheckKind } from './check.ts';
import { near } from './expected.ts';
import {
  countOf,
  exponential,
  type LengthFigure,
  lengthFigures,
  sortedSample,
  triangular,
  weibull,
} from './fixtures/length-laws.ts';
import { once } from './fixtures/once.ts';

/** A law of length whose figures are known in closed form. */
interface Law {
  readonly id: string;
  readonly what: string;
  readonly source: string;
  readonly kind?: Exclude<CheckKind, 'knownMiss'>;
  readonly lengths: () => LengthDistribution;
  /** Where the scan of the beard starts, mm. */
  readonly startMm?: number;
  readonly figures: Partial<Record<LengthFigure, readonly [value: number, tolerance: number]>>;
}

const definitions = 'definitions of ASTM D1440 and D5867 (from memory)';
const fibrogram = `closed form of the fibrogram, Hertel 1940 (from memory); ${definitions}`;
const scission =
  'exact law of random scission, fragmentation chapter of Krapivsky, Redner and Ben-Naim; integrated by hand';

const laws: readonly Law[] = [
  {
    id: 'length/1',
    what: 'all fibers 28 mm, scanned from 10 mm',
    source: definitions,
    kind: 'definition',
    lengths: () => uniformLength(28),
    startMm: 10,
    figures: {
      meanByNumber: [28, 1e-9],
      meanByWeight: [28, 1e-9],
      upperQuartile: [28, stepMm / 2],
      shortByNumber: [0, 0],
      shortByWeight: [0, 0],
      mean: [28, 1e-9],
      upperHalfMean: [28, 1e-9],
      uniformity: [100, 1e-9],
    },
  },
  {
    id: 'length/2',
    what: 'uniform 0 to 32 mm by number: L/2, 2L/3, L sqrt(3)/2, s/L, (s/L)^2',
    source: `closed form; ${definitions}`,
    lengths: () => triangular(32),
    // Fibres shorter than half a step have no place on the lattice, which moves figures by number.
    figures: {
      meanByNumber: [16, 0.15],
      meanByWeight: [21.333, 0.01],
      upperQuartile: [27.713, 0.01],
      shortByNumber: [39.69, 0.5],
      shortByWeight: [15.75, 0.01],
    },
  },
  {
    id: 'length/3.from-0',
    what: 'uniform 0 to 32 mm, scanned from the clamp: 0.853553 L and 58.579',
    source: fibrogram,
    lengths: () => triangular(32),
    figures: { upperHalfMean: [27.314, 0.02], uniformity: [58.58, 0.5] },
  },
  {
    id: 'length/3.from-3.8',
    what: 'uniform 0 to 32 mm, scanned from x0 = 3.8 mm: (L + x0)/2 and x0 + 0.853553 (L - x0)',
    source: fibrogram,
    lengths: () => triangular(32),
    startMm: 3.8,
    figures: { mean: [17.9, 0.02], upperHalfMean: [27.87, 0.02], uniformity: [64.23, 0.02] },
  },
  {
    id: 'length/4',
    what: 'exponential, mean 6 mm, scanned from 3.8 mm: 2.692635 a, 1 - e^(-s/a), 1 - (1 + s/a) e^(-s/a), 3.8 + 2.678347 a',
    source: fibrogram,
    lengths: () => exponential(6),
    startMm: 3.8,
    figures: {
      upperQuartile: [16.156, 0.03],
      shortByNumber: [87.96, 0.6],
      shortByWeight: [62.47, 0.03],
      mean: [9.8, 0.03],
      upperHalfMean: [19.87, 0.03],
    },
  },
  {
    // 0.27 % of its weight lies beyond the lattice's 65 mm; that takes 0.15 mm off L(w), 0.08 off the quartile, and adds 0.13 to the short.
    // Fibres below a quarter millimetre, h/2a of the number, have no place on it: that takes 0.64 off the short by number.
    id: 'length/5',
    what: 'exponential, mean 8 mm: 2a, 2.692635 a, short fiber',
    source: `closed form; ${definitions}`,
    lengths: () => exponential(8),
    figures: {
      meanByWeight: [16, 0.16],
      upperQuartile: [21.541, 0.09],
      shortByNumber: [79.56, 0.64],
      shortByWeight: [47.1, 0.14],
    },
  },
  {
    id: 'length/6',
    what: 'Weibull, shape 2.5, scale 22 mm, scanned from 3.8 mm: gamma-function forms',
    source: fibrogram,
    lengths: once(() => weibull(2.5, 22)),
    startMm: 3.8,
    figures: {
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
    id: 'length/7',
    what: 'Weibull, shape 3.5, scale 25 mm, scanned from 3.8 mm: gamma-function forms',
    source: fibrogram,
    lengths: once(() => weibull(3.5, 25)),
    startMm: 3.8,
    figures: {
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
  {
    id: 'length/12',
    what: 'all 28 mm, 0.01 random breaks a mm',
    source: scission,
    lengths: () => breakAtRandom(uniformLength(28), 0.01),
    figures: {
      meanByNumber: [21.875, 0.11],
      meanByWeight: [25.56, 0.01],
      shortByNumber: [20.67, 0.4],
      shortByWeight: [5.82, 0.01],
    },
  },
  {
    id: 'length/13',
    what: 'all 28 mm, 0.02 random breaks a mm',
    source: scission,
    lengths: () => breakAtRandom(uniformLength(28), 0.02),
    figures: { meanByWeight: [23.43, 0.01], shortByNumber: [35.06, 0.7], shortByWeight: [11.67, 0.01] },
  },
  {
    id: 'length/14',
    what: 'exponential, mean 8 mm, 0.05 random breaks a mm, stays exponential: a/(1 + theta a)',
    source: scission,
    lengths: () => breakAtRandom(exponential(8), 0.05),
    figures: { meanByNumber: [5.714, stepMm / 2], meanByWeight: [11.429, 0.05] },
  },
  {
    id: 'length/15',
    what: 'uniform 0 to 32 mm, 0.02 random breaks a mm',
    source: scission,
    lengths: () => breakAtRandom(triangular(32), 0.02),
    figures: {
      meanByNumber: [12.121, 0.2],
      meanByWeight: [18.314, 0.02],
      shortByNumber: [57.72, 0.7],
      shortByWeight: [27.48, 0.02],
    },
  },
  {
    id: 'length/41',
    what: 'half 20 mm and half 30 mm by mass: L(n) is the harmonic mean, L(w) the mean',
    source: 'number and mass of equal linear density, by hand',
    kind: 'plainSum',
    lengths: () =>
      blend([
        { lengths: uniformLength(20), share: 0.5 },
        { lengths: uniformLength(30), share: 0.5 },
      ]),
    figures: { meanByNumber: [24, 1e-9], meanByWeight: [25, 1e-9] },
  },
];

const rowsOf = ({ id, what, source, kind, lengths, startMm, figures }: Law): Check[] =>
  (Object.keys(figures) as LengthFigure[]).map((figure) => {
    const [value, tolerance] = figures[figure]!;
    const { name, unit, of } = lengthFigures[figure];
    return {
      id: `${id}.${figure}`,
      link: 'length',
      kind: kind ?? 'exact',
      what: `${what}: ${name}`,
      source,
      unit,
      expected: near(value, tolerance),
      ours: () => of(lengths(), startMm ?? 0),
    };
  });

/** How the number of fibres grows, for a start and a rate of random breaks. */
const broken = (id: string, what: string, start: () => LengthDistribution, rate: number, times: number): Check => ({
  id,
  link: 'length',
  kind: 'exact',
  what: `${what}, ${rate} random breaks a mm: fibers for each before, 1 + theta L(n)`,
  source: scission,
  unit: 'ratio',
  // Pieces shorter than half a step are booked as one step: about theta h too few.
  expected: near(times, times * rate * stepMm),
  ours: () => countOf(breakAtRandom(start(), rate)) / countOf(start()),
});

const printed = once(() => sortedSample([1, 3, 6, 11, 19, 27, 23, 9, 1]));
const mortonHearle = 'Morton & Hearle, Physical Properties of Textile Fibres, table 4.2';
const sortedFigure = (figure: string, value: number, tolerance: number, ours: () => number): Check => ({
  id: `length/8.${figure}`,
  link: 'length',
  kind: 'exact',
  what: `a sorted sample of 100 fibers, 3 to 19 mm, frequencies 1 3 6 11 19 27 23 9 1: ${figure}`,
  source: mortonHearle,
  unit: 'mm',
  expected: near(value, tolerance),
  ours,
});
const cumulated = [1236, 1233, 1218, 1176, 1077, 868, 517, 172, 19];

/**
 * The sorters' construction on a triangular array of 32 mm: a quarter along from the longest fibre that is as many as half of it, and
 * a quarter along from the base that half of that length cuts off.
 */
const sorted = once(() => {
  const [array, longestMm] = [triangular(32), 32];
  const length = (share: number) => lengthExceededMm(array, share, 'number');
  const place = (lengthMm: number) => 1 - shareBelow(array, lengthMm, 'number');
  const base = place(length(place(longestMm / 2) / 4) / 2);
  return { effectiveMm: length(base / 4), shortPercent: 100 * (1 - base) };
});
const sorters = 'Clegg’s construction on the sorted array (from memory)';

/** Share of the fibre that an ideal comber takes: all below its cut, none above, or a ramp around it. */
const noil = (cutMm: number, rampMm: number) =>
  100 *
  removeByLength(triangular(32), (l) => Math.min(1, Math.max(0, (cutMm + rampMm / 2 - l) / rampMm))).removedFraction;
// On the lattice a cut through a length takes half of it: the narrowest ramp.
const sharpMm = stepMm / 1e6;
const comber = (feed: string, cutMm: number, rampMm: number, percent: number): Check => ({
  id: `length/40.${feed}-${rampMm === sharpMm ? 'sharp' : 'ramp'}`,
  link: 'length',
  kind: 'exact',
  what: `noil of an ideal comber on a triangular array of 32 mm, detaching 14 mm, feed 4 mm ${feed}, ${rampMm === sharpMm ? 'sharp cut' : 'ramp of 4 mm'}`,
  source:
    rampMm === sharpMm
      ? 'Gegauff, noil = (cut/longest)^2 (from memory)'
      : 'Gegauff (from memory), averaged over the ramp',
  unit: '%',
  expected: near(percent, 0.02),
  ours: () => noil(cutMm, rampMm),
});

/** Slope of a figure of the triangular array as breakage starts, for a break in each mm. */
const slopeAtStart = (figure: (lengths: LengthDistribution) => number) => {
  const start = triangular(32);
  const rate = 1e-6;
  return (figure(breakAtRandom(start, rate)) - figure(start)) / rate;
};

/** Closed forms: figures of known laws, exact breakage, a printed sorting. */
export const lengthLawChecks: readonly Check[] = [
  ...laws.flatMap(rowsOf),
  sortedFigure('mean by number', 12.36, 1e-9, () => meanLengthMm(printed(), 'number')),
  sortedFigure('standard deviation', 3.148, 5e-4, () => {
    const lengths = printed();
    return (lengthVariationPercent(lengths, 'number') / 100) * meanLengthMm(lengths, 'number');
  }),
  sortedFigure('mean by weight', 13.162, 5e-4, () => meanLengthMm(printed(), 'weight')),
  ...cumulated.map(
    (value, k): Check => ({
      id: `length/8.cumulated-${3 + 2 * k}`,
      link: 'length',
      kind: 'plainSum',
      what: `the same sorted sample: fiber in lengths of ${3 + 2 * k} mm and more`,
      source: mortonHearle,
      unit: 'mm',
      expected: near(value, 1e-9),
      ours: () => 1236 * (1 - shareBelow(printed(), 2 + 2 * k, 'weight')),
    }),
  ),
  {
    id: 'length/9.effective',
    link: 'length',
    kind: 'exact',
    what: 'triangular array, longest 32 mm: effective length, 55/64 of the longest',
    source: sorters,
    unit: 'mm',
    expected: near(27.5, stepMm / 2),
    ours: () => sorted().effectiveMm,
  },
  {
    id: 'length/9.short',
    link: 'length',
    kind: 'exact',
    what: 'triangular array, longest 32 mm: short fiber by the sorters’ construction',
    source: sorters,
    unit: '%',
    expected: near(43.75, 0.5),
    ours: () => sorted().shortPercent,
  },
  broken('length/12.number', 'all 28 mm', () => uniformLength(28), 0.01, 1.28),
  broken('length/13.number', 'all 28 mm', () => uniformLength(28), 0.02, 1.56),
  broken('length/15.number', 'uniform 0 to 32 mm', () => triangular(32), 0.02, 1.32),
  {
    id: 'length/12.unbroken-mass',
    link: 'length',
    kind: 'exact',
    what: 'all 28 mm, 0.01 random breaks a mm: mass of unbroken fibers, e^(-theta L)',
    source: scission,
    unit: 'fraction',
    expected: near(0.7558, 0.0075),
    ours: () => breakAtRandom(uniformLength(28), 0.01)[28 / stepMm - 1]! * 28,
  },
  {
    id: 'length/12.unbroken-number',
    link: 'length',
    kind: 'exact',
    what: 'all 28 mm, 0.01 random breaks a mm: number of unbroken fibers, e^(-theta L)/(1 + theta L)',
    source: scission,
    unit: 'fraction',
    expected: near(0.5905, 0.0059),
    ours: () => {
      const lengths = breakAtRandom(uniformLength(28), 0.01);
      return lengths[28 / stepMm - 1]! / countOf(lengths);
    },
  },
  {
    id: 'length/18.short',
    link: 'length',
    kind: 'exact',
    what: 'uniform 0 to 32 mm as breakage starts: short fiber by weight rises by s^2 (1 - s/L) / (L/2) for each break a mm',
    source: scission,
    unit: 'mm',
    expected: near(6.08, 0.06),
    ours: () => slopeAtStart((lengths) => shortFibrePercent(lengths, 'weight') / 100),
  },
  {
    id: 'length/18.mean',
    link: 'length',
    kind: 'exact',
    what: 'uniform 0 to 32 mm as breakage starts: mean length by weight falls by L^2/6 for each break a mm',
    source: scission,
    unit: 'mm2',
    expected: near(-170.67, 0.3),
    ours: () => slopeAtStart((lengths) => meanLengthMm(lengths, 'weight')),
  },
  comber('forward', 12, sharpMm, 14.06),
  comber('forward', 12, 4, 14.19),
  comber('backward', 16, sharpMm, 25),
  comber('backward', 16, 4, 25.13),
];
