import type { Fact } from '../fact.ts';
import type { TrashPart } from '../lot.ts';

/** How a method takes foreign matter along: a level for a bare plant and a fair crop, raised by leaf and by a poor crop. */
export interface ForeignMatterFacts {
  /** Share of the seed cotton's weight on a leafless plant of the reference yield. */
  readonly base: Fact;
  /** Added for a plant that kept every leaf. */
  readonly perLeaf: Fact;
  /** Added when the yield is nothing, taken off when it is twice the reference. */
  readonly perPoorCrop: Fact;
  readonly referenceLintLbPerAcre: Fact;
  /** The sum is held between these. */
  readonly least: Fact;
  readonly most: Fact;
}

const tuned = 'chosen so that an ordinary crop comes to the published level';

export const foreignMatterFacts = {
  hand: {
    base: {
      value: 0.023,
      unit: 'fraction',
      range: [0.01, 0.03],
      source: `${tuned}: clean hand picking 1-3 % (USDA Agriculture Handbook 503; FAO/ITC texts)`,
      mark: 'memory',
    },
    perLeaf: {
      value: 0.012,
      unit: 'fraction',
      range: [0, 0.02],
      source: 'a leafy plant leaves more leaf in the hand; limits up to 5 %',
      mark: 'assumption',
    },
    perPoorCrop: {
      value: 0,
      unit: 'fraction',
      range: [0, 0.01],
      source: 'a hand takes the boll, not the plant',
      mark: 'assumption',
    },
    referenceLintLbPerAcre: {
      value: 200,
      unit: 'lb/acre',
      range: [150, 300],
      source: 'a fair yield when cotton was picked by hand',
      mark: 'assumption',
    },
    least: {
      value: 0.01,
      unit: 'fraction',
      range: [0, 0.02],
      source: 'hand picked 1-3 % clean (USDA Agriculture Handbook 503)',
      mark: 'memory',
    },
    most: {
      value: 0.05,
      unit: 'fraction',
      range: [0.03, 0.05],
      source: 'hand picked up to 5 % (USDA Agriculture Handbook 503)',
      mark: 'memory',
    },
  },
  spindle: {
    base: { value: 0.06, unit: 'fraction', range: [0.045, 0.08], source: `${tuned} of about 8 %`, mark: 'assumption' },
    perLeaf: {
      value: 0.09,
      unit: 'fraction',
      range: [0.03, 0.1],
      source: 'reaches the upper limit when no leaf has fallen',
      mark: 'assumption',
    },
    perPoorCrop: {
      value: 0.02,
      unit: 'fraction',
      range: [0, 0.03],
      source: 'the same plant parts are shared by less lint',
      mark: 'assumption',
    },
    referenceLintLbPerAcre: {
      value: 900,
      unit: 'lb/acre',
      range: [700, 1100],
      source: 'an ordinary picked yield',
      mark: 'assumption',
    },
    least: {
      value: 0.045,
      unit: 'fraction',
      range: [0.045, 0.05],
      source:
        'spindle picked 4.6 % over four tests (ASAE, Alternate harvesting systems and cotton quality); a hair below',
      mark: 'derived',
    },
    most: {
      value: 0.15,
      unit: 'fraction',
      range: [0.1, 0.15],
      source: 'at gins generally 5-15 % (Whitelock & Anthony 2003)',
      mark: 'published',
    },
  },
  stripper: {
    base: {
      value: 0.345,
      unit: 'fraction',
      range: [0.28, 0.38],
      source: `${tuned} of gin waste behind a field cleaner, 300-450 lb (Holt, farm press), on a dryland crop`,
      mark: 'assumption',
    },
    perLeaf: {
      value: 0.04,
      unit: 'fraction',
      range: [0, 0.06],
      source: 'the stripper takes the leaf with the boll',
      mark: 'assumption',
    },
    perPoorCrop: {
      value: 0.08,
      unit: 'fraction',
      range: [0.02, 0.1],
      source: 'burs and sticks come with the plant, lint with the yield',
      mark: 'assumption',
    },
    referenceLintLbPerAcre: {
      value: 450,
      unit: 'lb/acre',
      range: [350, 600],
      source: 'an ordinary stripped yield',
      mark: 'assumption',
    },
    least: {
      value: 0.25,
      unit: 'fraction',
      range: [0.25, 0.28],
      source: 'about 25 % even with a field extractor (Garner 1976); brush-stripped 27.8 % (ASAE, same)',
      mark: 'published',
    },
    most: {
      value: 0.4,
      unit: 'fraction',
      range: [0.368, 0.45],
      source:
        'the trashiest lots of a study held 36.8 % (Funk et al. 2018); room is left for a poor crop worse than those lots',
      mark: 'assumption',
    },
  },
} as const satisfies Record<string, ForeignMatterFacts>;

/** The classes of the foreign matter, as shares of it. */
export interface ForeignMatterShares {
  readonly shares: Readonly<Record<TrashPart, number>>;
  readonly unit: 'fraction';
  readonly source: string;
  readonly mark: 'assumption';
}
const shareSource =
  'shape remembered from USDA Agriculture Handbook 503; tuned so that gin waste per bale and trash at the stand close on published totals (Holt; Baker & Lalor 1988-89)';
export const foreignMatterShares = {
  hand: {
    shares: { burs: 0.15, sticks: 0.05, leaf: 0.55, motes: 0.15, dirt: 0.1 },
    unit: 'fraction',
    source: shareSource,
    mark: 'assumption',
  },
  spindle: {
    shares: { burs: 0.25, sticks: 0.1, leaf: 0.45, motes: 0.12, dirt: 0.08 },
    unit: 'fraction',
    source: shareSource,
    mark: 'assumption',
  },
  stripper: {
    shares: { burs: 0.66, sticks: 0.15, leaf: 0.12, motes: 0.03, dirt: 0.04 },
    unit: 'fraction',
    source: shareSource,
    mark: 'assumption',
  },
} as const satisfies Record<string, ForeignMatterShares>;

/** What the field cleaner on a stripper throws back, as shares of each part. */
export const fieldCleaner = {
  removedFraction: { burs: 0.64, sticks: 0.45, leaf: 0.3, motes: 0.1, dirt: 0.4, lint: 0.01, seed: 0.01 },
  unit: 'fraction',
  source:
    'leaves less than half of the foreign matter (published: Smith, Jones & Miller, Texas Agricultural Experiment Station, preface); split by class assumed',
  mark: 'assumption',
} as const;

export const harvestFacts = {
  spindleEfficiency: {
    value: 0.95,
    unit: 'fraction',
    range: [0.8, 0.98],
    source: 'extension picker guides: 95 % or more with good care, 95-98 % possible, losses near 20 % occur',
    mark: 'published',
  },
  hardLockFraction: {
    value: 0.97,
    unit: 'fraction',
    range: [0.9, 1],
    source: 'share of the cotton not in hard locks, which spindles cannot take',
    mark: 'common practice',
  },
  handEfficiency: {
    value: 0.98,
    unit: 'fraction',
    range: [0.95, 0.99],
    source: 'a careful hand leaves little',
    mark: 'common practice',
  },
  stripperEfficiency: {
    value: 0.98,
    unit: 'fraction',
    range: [0.96, 0.99],
    source: 'strippers also gather hard locks; small loss',
    mark: 'common practice',
  },
  spindleWettingPoints: {
    value: 1,
    unit: 'points of moisture',
    range: [0, 2],
    source: "spindle wetting adds up to 2 points (Cotton Australia, ginners' advice); the middle is taken",
    mark: 'assumption',
  },
  seedRegainRatio: {
    value: 1.5,
    unit: 'ratio',
    range: [1.35, 1.7],
    source: 'cottonseed regain over lint regain in the same air, 10 to 90 % humidity (ASAE D245 and ASHRAE tables)',
    mark: 'memory',
  },
  trashRegainRatio: {
    value: 1.3,
    unit: 'ratio',
    range: [1, 1.6],
    source: 'burs, sticks and leaf are damper than lint in the same air',
    mark: 'assumption',
  },
  stripperNepsFactor: {
    value: 1.37,
    unit: 'ratio',
    range: [1.2, 1.5],
    source: 'neps +37 % stripped against picked (ASAE, Alternate harvesting systems and cotton quality)',
    mark: 'published',
  },
  handPoundsPerDay: {
    value: 200,
    unit: 'lb seed cotton/day',
    range: [100, 500],
    source:
      'usual hand 200 lb, good hand 250-275, extremes to 500 (Hickman County Gazette 1990; Mississippi State University Extension 2008)',
    mark: 'published',
    note: 'plantation books printed by Phillips (1918, ch. 12) have lower means: 160 lb for men, 125 lb for women, 157 lb for a gang',
  },
  pickerAcresPerHour: {
    value: 8,
    unit: 'acre/h',
    range: [6.2, 8],
    source: 'six-row round-module picker 8, six-row basket 7.3, older basket 6.2 (delta machinery budgets)',
    mark: 'published',
  },
  stripperAcresPerHour: {
    value: 8,
    unit: 'acre/h',
    range: [5, 10],
    source: 'taken as for the picker',
    mark: 'assumption',
  },
  storableMoisturePercent: {
    value: 12,
    unit: '% wet basis',
    range: [10, 13],
    source: 'harvest and store below 12 % (Cotton Inc. 2021; Hughs et al. 2004)',
    mark: 'published',
  },
  poorCropShare: {
    value: 0.75,
    unit: 'fraction',
    range: [0.5, 0.9],
    source: 'share of the ordinary yield below which a crop is called poor',
    mark: 'assumption',
  },
  leafyFraction: {
    value: 0.5,
    unit: 'fraction',
    range: [0.3, 0.7],
    source: 'leaf left above which the harvest is called leafy',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;
