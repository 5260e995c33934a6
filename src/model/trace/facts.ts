import type { Facts } from '../fact.ts';

/** Averages of the chain, each way back from cloth to field. The oil mill's shares are the gin's own facts. A season of one's own can stand in for any of them. */
export const chainFacts = {
  finishingYield: {
    value: 0.95,
    unit: 'fraction',
    range: [0.9, 0.96],
    source: 'loss in scour and bleach 5 to 10 %',
    mark: 'memory',
  },
  weavingYield: {
    value: 0.969,
    unit: 'fraction',
    range: [0.96, 0.976],
    source:
      'Haque & Majumder, J. Textile and Apparel, Technology and Management (NC State): 2.43 to 3.96 % of the yarn wasted in two weaving mills; the middle',
    mark: 'published',
  },
  yarnRealisation: {
    value: 0.9,
    unit: 'fraction',
    range: [0.85, 0.952],
    source: 'USDA Economic Research Service, textile conversion factors until 2009: 111 lb of lint for 100 lb of yarn',
    mark: 'published',
    note: 'one mill by itself gives 85 to 90 % carded (Kumar, Process Management in Spinning, 2014); since 2009 USDA counts 105 lb, waste used again included',
  },
  battingYield: {
    value: 0.9,
    unit: 'fraction',
    range: [0.85, 0.95],
    source: 'batting is carded lint; its waste is taken as that of yarn',
    mark: 'assumption',
  },
  ginTurnout: {
    value: 0.38,
    unit: 'lint per seed cotton',
    range: [0.332, 0.42],
    source:
      'the turnout of a worked seed-value example (lint and seed value sheet, September 2011); 33.2 % in 1994/95 (USDA ERS Statistical Bulletin 929)',
    mark: 'published',
  },
  seedPerLint: {
    value: 1.4,
    unit: 'seed per lint, by weight',
    range: [1.26, 1.65],
    source: 'about 700 lb of seed with a 500 lb bale (Ashley, Thomas, Holt, Valco, J. Cotton Sci. 22(1):47-59, 2018)',
    mark: 'published',
    note: 'older cotton gave about 800 lb',
  },
  bollGrams: {
    value: 4,
    unit: 'g seed cotton',
    range: [2, 6],
    source: 'Univ. of Florida EDIS AG450',
    mark: 'published',
  },
  deliveredPerGrown: {
    value: 1,
    unit: 'seed cotton at the gin per seed cotton grown, by weight',
    range: [0.85, 1.25],
    source:
      'what a harvest leaves in the field and the leaf, burs and sticks it takes along weigh about the same; stripped cotton brings more along',
    mark: 'assumption',
  },
  ginWastePerLint: {
    value: 0.2,
    unit: 'gin waste per lint, by weight',
    range: [0.15, 0.31],
    source: '75 to 125 lb a bale of picked cotton (Holt, farm press); about 150 lb in EPA figures',
    mark: 'published',
    note: 'stripped cotton 300 to 700 lb a bale',
  },
  yarnNe: {
    value: 30,
    unit: 'Ne',
    range: [28, 36],
    source: 'a square quilting cloth of 68 x 68 comes to its weight with yarns of 28s to 30s',
    mark: 'derived',
  },
  rainInches: {
    value: 25,
    unit: 'in over a season',
    range: [20, 30],
    source:
      'cotton needs 20 to 30 in of water in humid country (National Cotton Council, water management); taken as rain alone',
    mark: 'published',
    note: '40 to 50 in in the desert, where most is irrigation',
  },
  irrigationInches: {
    value: 0,
    unit: 'in over a season',
    range: [0, 20],
    source:
      'none in humid country; what a desert’s 40 to 50 in need above that (National Cotton Council, water management)',
    mark: 'derived',
  },
  bollsPerPlant: {
    value: 6,
    unit: 'bolls',
    range: [3, 20],
    source:
      'a typical plant has about 6, up to 20 in very good ground (Cotton Incorporated, production dictionary, "boll")',
    mark: 'published',
    note: 'with the stand below gives a good crop of about 820 lb of lint an acre',
  },
  plantsPerAcre: {
    value: 41000,
    unit: 'plants/acre',
    range: [30000, 60000],
    source: 'Mississippi State extension: 40 to 50 thousand, about 3 plants a foot in 38 in rows',
    mark: 'published',
  },
  rowInches: { value: 38, unit: 'in', range: [15, 40], source: 'rows of the mid-South', mark: 'common practice' },
  handPickPoundsPerDay: {
    value: 200,
    unit: 'lb seed cotton/day',
    range: [100, 500],
    source: 'usual hand picker 200 lb a day; a good hand 250 to 275',
    mark: 'published',
  },
  machineAcresPerHour: {
    value: 8,
    unit: 'acre/h',
    range: [6.2, 8],
    source:
      'six-row round-module picker 8, basket pickers 6.2 to 7.3 (harvest-capacity study for Arkansas, Tennessee, Mississippi and Missouri)',
    mark: 'published',
  },
  fibreMtex: {
    value: 170,
    unit: 'mtex',
    range: [140, 190],
    source: 'upland of micronaire 4.3, taken nominally (39.37 mtex a unit)',
    mark: 'derived',
  },
  fibreLengthMm: {
    value: 23,
    unit: 'mm',
    range: [18, 26],
    source: 'mean length of upland at 28.4 mm upper half mean and 82 % uniformity',
    mark: 'derived',
  },
} as const satisfies Facts;

export const projectFacts = {
  usableWidthInches: {
    value: 42,
    unit: 'in',
    range: [40, 44],
    source: 'usable width of 44/45 in cloth taken as 42 (sewphancy.com)',
    mark: 'published',
  },
  quiltingOunces: {
    value: 3.66,
    unit: 'oz/yd2',
    range: [3.4, 5],
    source: '68 x 68 quilting base, 45 in at 3.5 yd/lb (maker page); sellers say up to 5',
    mark: 'published',
  },
  battingOunces: {
    value: 4,
    unit: 'oz/yd2',
    range: [2, 6],
    source: 'medium batting 4 to 5 oz/yd2 (bestreviews)',
    mark: 'published',
  },
  piecingFactor: {
    value: 1.3,
    unit: 'ratio',
    range: [1.1, 1.6],
    source: 'seam allowances and cutting of a pieced top',
    mark: 'assumption',
  },
  backingOverInches: {
    value: 8,
    unit: 'in',
    range: [4, 12],
    source: 'backing 8 in larger each way',
    mark: 'common practice',
  },
  bindingYards: {
    value: 0.5,
    unit: 'yd of 42 in',
    range: [0.375, 0.875],
    source: 'binding of a bed quilt',
    mark: 'common practice',
  },
  battingOverInches: {
    value: 8,
    unit: 'in',
    range: [4, 12],
    source: 'batting larger than the top by 4 to 12 in, most often 6 to 8 (quiltsandtreasures.com)',
    mark: 'published',
  },
  roundYards: {
    value: 0.25,
    unit: 'yd',
    range: [0.125, 0.25],
    source: 'cloth is bought in quarter yards, in some shops in eighths',
    mark: 'common practice',
  },
} as const satisfies Facts;

/** Cloth of one's own: what is taken when nothing is said, and the limits. */
export const ownClothLimits = {
  yards: {
    usual: 3,
    low: 0.125,
    high: 10_000,
    unit: 'yd',
    source: 'an eighth of a yard to a mill order',
    mark: 'assumption',
  },
  widthInches: {
    usual: 44,
    low: 10,
    high: 130,
    unit: 'in',
    source: 'narrow goods to the widest quilt backing',
    mark: 'assumption',
  },
  ouncesPerSquareYard: {
    usual: 4.3,
    low: 0.5,
    high: 40,
    unit: 'oz/yd2',
    source: 'lawn to heavy duck, and beyond both',
    mark: 'assumption',
  },
} as const;

/** How many of a project are made, or how many of a thing the way forward begins with. */
export const countLimits = { low: 1, high: 1000, unit: 'pieces', source: 'one to a shop', mark: 'assumption' } as const;
