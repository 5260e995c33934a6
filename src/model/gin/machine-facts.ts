import type { Fact, Mark } from '../fact.ts';
import type { PartMasses } from '../lot.ts';

/** What one machine takes out of what enters it, as a share of each part; a part not named passes. */
export interface RemovalFact {
  readonly removedFraction: Partial<PartMasses>;
  /** Limits for the parts for which a source gives some. */
  readonly ranges?: Readonly<Partial<Record<keyof PartMasses, readonly [low: number, high: number]>>>;
  readonly unit: 'fraction';
  readonly source: string;
  readonly mark: Mark;
}

export type SeedCottonMachine = 'moduleFeeder' | 'cylinderCleaner' | 'stickMachine' | 'separator' | 'extractorFeeder';

/**
 * Seed-cotton machines. The class-by-class fractions are not published for every machine: they are assumptions or memory,
 * chosen so that gin waste per bale, efficiency of pre-cleaning and trash at the stand close on published totals.
 */
export const seedCottonRemoval = {
  moduleFeeder: {
    removedFraction: { burs: 0.02, sticks: 0.02, leaf: 0.03, motes: 0, dirt: 0.15, lint: 0.0003, seed: 0.0003 },
    unit: 'fraction',
    source:
      'the dispersing head takes out some trash (ARS Stoneville, Overview of a Cotton Gin, in kind); size assumed',
    mark: 'assumption',
  },
  cylinderCleaner: {
    removedFraction: { burs: 0.05, sticks: 0.08, leaf: 0.12, motes: 0.04, dirt: 0.3, lint: 0.0005, seed: 0.0003 },
    unit: 'fraction',
    source:
      'six-cylinder inclined cleaner; one cleaner takes 10-40 % of all trash (USDA Agriculture Handbook 503, memory); split assumed',
    mark: 'assumption',
  },
  stickMachine: {
    removedFraction: { burs: 0.52, sticks: 0.45, leaf: 0.08, motes: 0.05, dirt: 0.1, lint: 0.004, seed: 0.004 },
    ranges: { burs: [0.4, 0.65], sticks: [0.35, 0.55], leaf: [0.08, 0.35], lint: [0.0005, 0.01] },
    unit: 'fraction',
    source: 'burs 50-65 %, sticks 40-50 %, fine 10-35 % (USDA Agriculture Handbook 503)',
    mark: 'memory',
  },
  separator: {
    removedFraction: { leaf: 0.05, dirt: 0.1, lint: 0.0003 },
    unit: 'fraction',
    source: 'the air separator that returns the overflow drops a little fine trash',
    mark: 'assumption',
  },
  extractorFeeder: {
    removedFraction: { burs: 0.5, sticks: 0.35, leaf: 0.22, motes: 0.15, dirt: 0.25, lint: 0.002, seed: 0.002 },
    ranges: { burs: [0.3, 0.7], leaf: [0.2, 0.4] },
    unit: 'fraction',
    source:
      'burs about 70 %, motes 15 %, the rest 40 %, all about 40 % (USDA Agriculture Handbook 503 citing Read 1972)',
    mark: 'memory',
  },
} as const satisfies Record<SeedCottonMachine, RemovalFact>;

/** How a stand parts what enters it: shares to the lint and to the seed; the rest is waste. */
export interface StandFact {
  readonly toLint: Partial<PartMasses>;
  readonly toSeed: Partial<PartMasses>;
  readonly unit: 'fraction';
  readonly source: string;
  readonly mark: Mark;
}
export type StandKind = 'saw' | 'roller';
export const standSplit = {
  saw: {
    toLint: { lint: 0.986, seed: 0.0006, burs: 0.25, sticks: 0.3, leaf: 0.7, motes: 0.4, dirt: 0.3 },
    toSeed: { lint: 0.006, seed: 0.998, burs: 0.25, sticks: 0.25, leaf: 0.1, motes: 0.25, dirt: 0.3 },
    unit: 'fraction',
    source:
      'saws between ribs; chosen so that seed per bale and trash in lint close on published totals (Ashley et al. 2018; Holt; lint-cleaning efficiency at gins)',
    mark: 'assumption',
  },
  roller: {
    toLint: { lint: 0.99, seed: 0.0004, burs: 0.4, sticks: 0.4, leaf: 0.8, motes: 0.55, dirt: 0.35 },
    toSeed: { lint: 0.006, seed: 0.999, burs: 0.45, sticks: 0.45, leaf: 0.15, motes: 0.35, dirt: 0.4 },
    unit: 'fraction',
    source:
      'higher turnout and more foreign matter in lint and seed than behind saws (Gillum & Armijo 2007; Armijo & Gillum 2010, in kind); sizes assumed',
    mark: 'assumption',
  },
} as const satisfies Record<StandKind, StandFact>;

/** Trash that a first saw lint cleaner takes out of what enters it. */
export const lintCleanerTrash = {
  removedFraction: { burs: 0.5, sticks: 0.4, leaf: 0.4, motes: 0.45, dirt: 0.45, seed: 0.35 },
  unit: 'fraction',
  source:
    'about 35 % on average over two units, the first above the second (lint-cleaning efficiency at gins, 66 bales); split by class assumed',
  mark: 'assumption',
} as const satisfies RemovalFact;

export type LintCleanerKind = 'saw' | 'roller' | 'air';

/** Lint cleaners by their place in the line: first, second, third. */
export const lintCleanerStages = [
  {
    lintLost: {
      value: 0.02,
      unit: 'fraction',
      range: [0.015, 0.03],
      source: 'first unit: about 20 lb a 500-lb bale, at least half of it fibre (Anthony 2000)',
      mark: 'derived',
    },
    trashFactor: {
      value: 1,
      unit: 'ratio',
      range: [1, 1],
      source: 'by definition: the table is quoted for the first unit',
      mark: 'assumption',
    },
  },
  {
    lintLost: {
      value: 0.012,
      unit: 'fraction',
      range: [0.008, 0.02],
      source: 'two units together about 28.8 lb, 13.4-38.6 lb (Anthony 1997; Trans. ASAE 43(2))',
      mark: 'derived',
    },
    trashFactor: {
      value: 0.75,
      unit: 'ratio',
      range: [0.6, 0.9],
      source: 'second below first (lint-cleaning efficiency at gins, in kind)',
      mark: 'assumption',
    },
  },
  {
    lintLost: {
      value: 0.009,
      unit: 'fraction',
      range: [0.005, 0.015],
      source: 'extrapolated from the first two',
      mark: 'assumption',
    },
    trashFactor: {
      value: 0.55,
      unit: 'ratio',
      range: [0.4, 0.7],
      source: 'extrapolated from the first two',
      mark: 'assumption',
    },
  },
] as const satisfies readonly { lintLost: Fact; trashFactor: Fact }[];

/** What the other kinds of lint cleaner do against a saw cleaner in the same place. */
export interface LintCleanerFact {
  /** Lint lost; null where it follows the saw table by stage. */
  readonly lintLost: Fact | null;
  /** The most of them that a gin sets in line. */
  readonly mostInLine: Fact;
  /** Trash removal against a saw cleaner. */
  readonly cleaningFactor: Fact;
  readonly nepsFactor: Fact;
}
export const lintCleanerKinds = {
  saw: {
    mostInLine: {
      value: 3,
      unit: 'count',
      range: [2, 3],
      source: 'three saw-type units is the most a gin sets in line',
      mark: 'common practice',
    },
    lintLost: null,
    cleaningFactor: {
      value: 1,
      unit: 'ratio',
      range: [1, 1],
      source: 'by definition: the table is quoted for saw cleaners',
      mark: 'assumption',
    },
    nepsFactor: {
      value: 1.43,
      unit: 'ratio',
      range: [1.3, 1.5],
      source: 'neps 11 to 32 per 100 in2 of web over three units: the cube root (Mangialardi 1989)',
      mark: 'derived',
    },
  },
  roller: {
    mostInLine: {
      value: 2,
      unit: 'count',
      range: [1, 2],
      source: 'two roller-type units behind a roller stand',
      mark: 'common practice',
    },
    lintLost: {
      value: 0.006,
      unit: 'fraction',
      range: [0.003, 0.01],
      source: 'a gentle cleaner behind a roller stand loses about a third of what saws lose',
      mark: 'assumption',
    },
    cleaningFactor: {
      value: 0.25,
      unit: 'ratio',
      range: [0.2, 0.4],
      source: 'taken as for the air cleaner',
      mark: 'assumption',
    },
    nepsFactor: {
      value: 1.1,
      unit: 'ratio',
      range: [1, 1.2],
      source: 'fewer neps than behind saws (Armijo & Gillum 2010, in kind)',
      mark: 'assumption',
    },
  },
  air: {
    mostInLine: {
      value: 1,
      unit: 'count',
      range: [1, 1],
      source: 'one flow-through unit',
      mark: 'common practice',
    },
    lintLost: {
      value: 0.004,
      unit: 'fraction',
      range: [0.001, 0.008],
      source: 'flow-through cleaner: less loss than a saw unit',
      mark: 'assumption',
    },
    cleaningFactor: {
      value: 0.25,
      unit: 'ratio',
      range: [0.2, 0.3],
      source: "about 25 % of one saw unit's cleaning (Mangialardi & Anthony 1997)",
      mark: 'published',
    },
    nepsFactor: {
      value: 1.02,
      unit: 'ratio',
      range: [1, 1.05],
      source: 'no significant effect (Mangialardi & Anthony 1997)',
      mark: 'assumption',
    },
  },
} as const satisfies Record<LintCleanerKind, LintCleanerFact>;

/** Which fibres the waste of a lint cleaner holds: chance = A x (floor + exp(-length / scale)), A solved for the lint lost. */
export const wasteByLength = {
  floor: {
    value: 0.03,
    unit: 'ratio',
    range: [0.02, 0.05],
    source:
      'calibrated so that more than a third of the fibre in the waste is 12.7 mm or shorter (Hughs, Armijo & Foulk 2013)',
    mark: 'assumption',
  },
  scaleMm: { value: 6, unit: 'mm', range: [5, 8], source: 'calibrated together with the floor', mark: 'assumption' },
} as const satisfies Record<string, Fact>;

export const gridBarWaste = {
  limitLb: {
    value: 28.5,
    unit: 'lb per 500-lb bale',
    range: [27, 30],
    source: 'fitted to 11.7, 20.3, 21.4, 27.1, 27.6 lb with 1 to 5 grid bars (Anthony 1999, Beltwide 652)',
    mark: 'derived',
  },
  perBar: { value: 0.6, unit: '1/bar', range: [0.5, 0.7], source: 'the same fit', mark: 'derived' },
} as const satisfies Record<string, Fact>;
