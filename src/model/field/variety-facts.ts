import type { DecisionsOf } from '../decisions.ts';
import type { Fact } from '../fact.ts';
import { assumption, derived, memory, published } from './mark.ts';

export type VarietyId = DecisionsOf<'planting'>['variety'];

const peak =
  'fibre-length model calibrated jointly to published stages (Armijo et al. 2019, Hughs et al. 2013, Byler 2005, USDA crop means)';
const raised = `${peak}; raised so that the mean crop, shortened by its season, is classed at the published staple (USDA-AMS 2012: 35.7; West Texas 35.6, 2006-07)`;
const sumner = 'inside Sumner, Mississippi 1994, table 13 (Mississippi State variety trials)';
const turnout =
  'chosen so that a picked farm leaves about 700 lb of seed with a 500-lb bale (Ashley, Thomas, Holt & Valco 2018) and gins out near 38 %, the upper of the tables’ 35 and 38 (Mississippi State, Estimating Yield by Boll Counting)';
const fullWall = 'lint per seed over length at the variety’s linear density when full';

/** What is bred into a class of varieties. Lint share is set here once, for the whole chain. */
export interface VarietyFacts {
  /** Lint / (lint + seed), dry. */
  readonly lintShare: Fact;
  /** Seed cotton in a full first-position boll, air-dry. */
  readonly bollGrams: Fact;
  /** Mass of 100 fuzzy seeds. */
  readonly seedIndexGrams: Fact;
  readonly fibresPerSeed: Fact;
  readonly peakMm: Fact;
  readonly relativeSpread: Fact;
  readonly brokenPerMm: Fact;
  readonly strengthGPerTex: Fact;
  readonly breakTendency: Fact;
  readonly standardFinenessMtex: Fact;
  readonly firstFruitingNode: Fact;
  readonly squareHeatShiftDd60: Fact;
  readonly openHeatShiftDd60: Fact;
}

const uplandPlant = {
  firstFruitingNode: published(
    6.5,
    'node',
    [5, 8],
    'Cotton Branch Development (guide): nodes 4-8; Edmisten & Burmester 1997: 5-6 in short-season types',
  ),
  squareHeatShiftDd60: derived(0, '°F-day', [-25, 25], 'the stage table is for upland'),
  openHeatShiftDd60: derived(0, '°F-day', [-50, 50], 'the stage table is for upland'),
  relativeSpread: assumption(0.16, 'ratio', [0.14, 0.18], peak),
  breakTendency: assumption(1, 'ratio', [1, 1], 'by definition: upland of 30 g/tex is the reference'),
};

export const varietyFacts = {
  uplandShort: {
    ...uplandPlant,
    lintShare: derived(0.43, 'fraction', [0.36, 0.45], turnout),
    bollGrams: derived(4.8, 'g', [2, 6], sumner),
    seedIndexGrams: derived(10, 'g', [7.8, 11.3], sumner),
    fibresPerSeed: derived(17900, 'fibres/seed', [10000, 20000], fullWall),
    peakMm: assumption(28.2, 'mm', [27, 29], raised),
    brokenPerMm: assumption(0.015, 'breaks/mm', [0.01, 0.02], peak),
    strengthGPerTex: assumption(
      28,
      'g/tex',
      [25.5, 31.8],
      'chosen inside the 25.5-31.8 of upland in the Mississippi State variety trials 1994',
    ),
    standardFinenessMtex: memory(200, 'mtex', [180, 210], 'coarser upland'),
  },
  uplandMedium: {
    ...uplandPlant,
    lintShare: derived(0.44, 'fraction', [0.36, 0.45], turnout),
    bollGrams: derived(4.65, 'g', [2, 6], sumner),
    seedIndexGrams: derived(9.8, 'g', [7.8, 11.3], sumner),
    fibresPerSeed: derived(15350, 'fibres/seed', [10000, 20000], fullWall),
    peakMm: assumption(31.3, 'mm', [30.2, 32.2], raised),
    brokenPerMm: assumption(0.0087, 'breaks/mm', [0.005, 0.012], peak),
    strengthGPerTex: published(30, 'g/tex', [29, 31], 'USDA-AMS crops of 2010 and 2012'),
    standardFinenessMtex: memory(195, 'mtex', [180, 210], 'middling upland'),
  },
  uplandLong: {
    ...uplandPlant,
    lintShare: derived(0.43, 'fraction', [0.36, 0.45], turnout),
    bollGrams: derived(4.4, 'g', [2, 6], sumner),
    seedIndexGrams: derived(9.8, 'g', [7.8, 11.3], sumner),
    fibresPerSeed: derived(13000, 'fibres/seed', [10000, 20000], fullWall),
    peakMm: assumption(33.2, 'mm', [32.2, 34.2], raised),
    brokenPerMm: assumption(0.0028, 'breaks/mm', [0.001, 0.006], peak),
    strengthGPerTex: assumption(
      31.5,
      'g/tex',
      [30, 33],
      'chosen near the strongest upland, 31.8, of the Mississippi State variety trials 1994',
    ),
    standardFinenessMtex: memory(185, 'mtex', [170, 200], 'finer upland'),
  },
  pima: {
    lintShare: memory(0.39, 'fraction', [0.36, 0.42], 'Pima lint percent about 38'),
    bollGrams: memory(3.3, 'g', [3, 3.5], 'Pima boll'),
    seedIndexGrams: memory(11, 'g', [10, 13], 'Pima seed is large'),
    fibresPerSeed: derived(11900, 'fibres/seed', [10000, 20000], fullWall),
    peakMm: assumption(40, 'mm', [39, 42], raised),
    relativeSpread: assumption(0.12, 'ratio', [0.1, 0.14], peak),
    brokenPerMm: assumption(0.0037, 'breaks/mm', [0.002, 0.006], peak),
    strengthGPerTex: published(41.7, 'g/tex', [40, 42], 'USDA-AMS crop of 2010, American Pima'),
    breakTendency: assumption(0.72, 'ratio', [0.6, 0.9], 'upland strength over Pima strength, 30/41.7; sign published'),
    standardFinenessMtex: memory(165, 'mtex', [150, 175], 'American Pima'),
    firstFruitingNode: derived(8, 'node', [7, 9], 'Munk, Hutmacher & Wroble 2007: more vegetative nodes than Acala'),
    squareHeatShiftDd60: derived(
      36,
      '°F-day',
      [20, 100],
      'Munk, Hutmacher & Wroble 2007: flowers 1-4 days later than Acala',
      'Kittock et al. 1981 put peak flowering of Pima S-5 18 days later',
    ),
    openHeatShiftDd60: derived(
      50,
      '°F-day',
      [0, 100],
      'Hutmacher et al. 2011: needs a season two to three weeks longer',
    ),
  },
} as const satisfies Record<VarietyId, VarietyFacts>;

/** What one position of fruit keeps, and how many sites there are. */
export interface PositionFacts {
  /** Share of a branch's sites at this position that give a boll when nothing is wrong. */
  readonly kept: Fact;
  /** Sites at this position for each fruiting branch. */
  readonly sites: Fact;
  /** Squares that reach their flower. */
  readonly squaresKept: Fact;
}

const fitted = 'fitted so that yield shares match Jenkins 1990, Beltwide 2260, and Burch & Krieg 2002, Beltwide I018';
const fittedPima = 'Munk, Hutmacher & Wroble 2007: Pima has more yield further out; sizes chosen';
const spurs = 'sites per branch chosen so that 40-60 % of fruit is shed (UT Crops 2013; Alabama 2019, agfax.com)';
const early = 'share of the shedding that falls on squares; the split is not published';

export const positionTable = {
  upland: [
    {
      kept: derived(0.8, 'fraction', [0.7, 0.9], fitted),
      sites: derived(1, 'site/branch', null, 'by definition'),
      squaresKept: assumption(0.9, 'fraction', [0.8, 0.95], early),
    },
    {
      kept: derived(0.46, 'fraction', [0.4, 0.6], fitted),
      sites: assumption(0.8, 'site/branch', [0.6, 1], spurs),
      squaresKept: assumption(0.85, 'fraction', [0.7, 0.95], early),
    },
    {
      kept: derived(0.19, 'fraction', [0.1, 0.3], fitted),
      sites: assumption(0.45, 'site/branch', [0.3, 1], spurs),
      squaresKept: assumption(0.8, 'fraction', [0.6, 0.95], early),
    },
    {
      kept: derived(0.12, 'fraction', [0.05, 0.2], fitted),
      sites: assumption(0.3, 'site/node', [0.2, 1], spurs),
      squaresKept: assumption(0.85, 'fraction', [0.6, 0.95], early),
    },
  ],
  pima: [
    {
      kept: derived(0.72, 'fraction', [0.6, 0.8], fittedPima),
      sites: derived(1, 'site/branch', null, 'by definition'),
      squaresKept: assumption(0.85, 'fraction', [0.8, 0.95], early),
    },
    {
      kept: derived(0.58, 'fraction', [0.5, 0.7], fittedPima),
      sites: assumption(0.9, 'site/branch', [0.7, 1], spurs),
      squaresKept: assumption(0.85, 'fraction', [0.7, 0.95], early),
    },
    {
      kept: derived(0.35, 'fraction', [0.2, 0.5], fittedPima),
      sites: assumption(0.65, 'site/branch', [0.4, 1], spurs),
      squaresKept: assumption(0.8, 'fraction', [0.6, 0.95], early),
    },
    {
      kept: derived(0.12, 'fraction', [0.05, 0.2], fittedPima),
      sites: assumption(0.3, 'site/node', [0.2, 1], spurs),
      squaresKept: assumption(0.85, 'fraction', [0.6, 0.95], early),
    },
  ],
} as const satisfies Record<string, readonly PositionFacts[]>;

/** What was different in the 1930s. */
export const thirtiesFacts = {
  lintShareFactor: derived(0.81, 'ratio', [0.78, 0.86], 'hand-picked cotton of the time then gins out at 33-36 %'),
  bollFactor: assumption(0.9, 'ratio', [0.8, 1], 'no fertiliser; smaller bolls'),
  capacityFactor: derived(
    0.25,
    'ratio',
    [0.2, 0.35],
    'USDA-NASS 1930-1939: 157-270 lb of lint an acre, against about 800 today',
  ),
  strengthFactor: assumption(
    0.87,
    'ratio',
    [0.8, 0.95],
    'about 26 g/tex when instrument classing began, 30 today (southeastfarmpress.com, 2012 classing); cotton of the 1930s is taken to be as strong as that',
  ),
} as const satisfies Record<string, Fact>;
