import type { Facts, FactTable } from '../fact.ts';

/** Cloths that shrink alike in the first wash. */
export type WashClass =
  | 'loomState'
  | 'finished'
  | 'quilting'
  | 'open'
  | 'rawDenim'
  | 'compacted'
  | 'jersey'
  | 'interlock';

/** What a first wash and tumble takes, percent: the usual figure and the range that is given. */
export const washTable: FactTable<{
  wash: WashClass;
  lengthPercent: number;
  lengthRange: readonly [low: number, high: number];
  widthPercent: number;
}> = {
  rows: [
    { wash: 'loomState', lengthPercent: 10, lengthRange: [8, 15], widthPercent: 6 },
    { wash: 'finished', lengthPercent: 4, lengthRange: [3, 8], widthPercent: 2.5 },
    { wash: 'quilting', lengthPercent: 3, lengthRange: [2, 4], widthPercent: 2 },
    { wash: 'open', lengthPercent: 7, lengthRange: [5, 10], widthPercent: 5 },
    { wash: 'rawDenim', lengthPercent: 8, lengthRange: [7, 10], widthPercent: 3 },
    { wash: 'compacted', lengthPercent: 1, lengthRange: [0, 1], widthPercent: 1 },
    { wash: 'jersey', lengthPercent: 7, lengthRange: [5, 10], widthPercent: 4 },
    { wash: 'interlock', lengthPercent: 6, lengthRange: [5, 10], widthPercent: 4 },
  ],
  unit: '%',
  source: 'textbook ranges for the length, not read in print; what the width loses is less, and the sizes are ours',
  mark: 'memory',
  note: 'sellers’ pages say 2 to 5 % of cotton in general; below 3 % is sold as pre-shrunk',
};

export const stripFacts = {
  widthMm: { value: 50, unit: 'mm', source: 'strip of 5 cm, as in GATE 2021 Q52', mark: 'published' },
  threadsTogether: {
    value: 1,
    unit: 'ratio',
    range: [0.7, 1.2],
    source: 'all threads of the strip are taken to break together; crimp takes from it, pressing adds to it',
    mark: 'assumption',
  },
} as const satisfies Facts;
