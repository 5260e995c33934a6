import type { Facts } from '../fact.ts';

const slips = 'wide enough for any yarn or cloth of the trade, so that only slips of the pen are refused';

/** What may be typed at the bench beside a class card, low and high. */
export const benchLimitTable = {
  limits: {
    trashAreaPercent: { low: 0, high: 5, unit: '%' },
    noilPercent: { low: 4, high: 25, unit: '%' },
    twist: { low: 2, high: 7, unit: 'turns per inch per sqrt(Ne)' },
    endsPerInch: { low: 5, high: 400, unit: 'per inch' },
    picksPerInch: { low: 5, high: 400, unit: 'per inch' },
    loopMm: { low: 1.2, high: 8, unit: 'mm' },
    warpCrimpPercent: { low: 0, high: 40, unit: '%' },
    weftCrimpPercent: { low: 0, high: 40, unit: '%' },
  },
  unit: 'as said beside each',
  source: slips,
  mark: 'assumption',
} as const;

/** What one input is drawn over, and in how many places. */
export const sweepTable = {
  ranges: {
    staple: { low: 0.7, high: 1.7, unit: 'in' },
    micronaire: { low: 3, high: 6.5, unit: 'micronaire' },
    shortFibre: { low: 75, high: 88, unit: '% uniformity' },
    count: { low: 6, high: 120, unit: 'Ne' },
  },
  unit: 'as said beside each',
  source:
    'from the shortest to the longest, finest and coarsest that is grown or spun; uniformity stands for short fiber',
  mark: 'assumption',
} as const;

export const benchFacts = {
  usualNoilPercent: {
    value: 14,
    unit: '%',
    range: [8, 20],
    source: 'ordinary combing takes 10 to 18 % (degree names from memory); the middle',
    mark: 'memory',
  },
  sweepPlaces: {
    value: 24,
    unit: 'count',
    range: [10, 60],
    source: 'places at which a curve is worked out',
    mark: 'assumption',
  },
  evennessCutMm: {
    value: 8,
    unit: 'mm',
    range: [8, 10],
    source: 'length of yarn that an evenness tester weighs at a time',
    mark: 'memory',
  },
  mostBales: {
    value: 40,
    unit: 'count',
    range: [10, 80],
    source: 'bales of a lay-down that a link can carry',
    mark: 'assumption',
  },
} as const satisfies Facts;
