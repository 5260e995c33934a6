import type { DecisionsOf } from '../decisions.ts';
import type { Fact } from '../fact.ts';

export type ModuleKind = DecisionsOf<'module'>['kind'];
export type ModuleCover = DecisionsOf<'module'>['cover'];

/** What one module, or one wagon, holds and how it lies in the rain. */
export interface ModuleFacts {
  readonly seedCottonLb: Fact;
  /** Area that rain falls on, seen from above. */
  readonly topSquareFeet: Fact;
  readonly volumeCubicFeet: Fact;
}

export const moduleFacts = {
  round: {
    seedCottonLb: {
      value: 5000,
      unit: 'lb',
      range: [4500, 5625],
      source:
        'a round module weighs in the neighbourhood of 5,000 lb (farm press); eight make 45,000 lb (cottonfarming.com)',
      mark: 'published',
    },
    topSquareFeet: {
      value: 60,
      unit: 'ft2',
      range: [60, 60],
      source: '8 ft wide x 7.5 ft diameter (cottongrower.com)',
      mark: 'derived',
    },
    volumeCubicFeet: {
      value: 353.43,
      unit: 'ft3',
      source: 'cylinder 8 ft wide, 7.5 ft diameter (cottongrower.com): pi/4 x 7.5^2 x 8',
      mark: 'derived',
    },
  },
  conventional: {
    seedCottonLb: {
      value: 21000,
      unit: 'lb',
      range: [20000, 25000],
      source: 'about 21,000 lb, 16 bales (encyclopaedia article on ginning); 20,000-25,000 lb from memory',
      mark: 'published',
    },
    topSquareFeet: {
      value: 256,
      unit: 'ft2',
      range: [240, 256],
      source: '8 ft x 32 ft (Searcy et al. 2010)',
      mark: 'derived',
    },
    volumeCubicFeet: {
      value: 2048,
      unit: 'ft3',
      source: 'box 8 x 8 x 32 ft (Searcy et al. 2010); the true section is a trapezium',
      mark: 'derived',
    },
  },
  wagon: {
    seedCottonLb: {
      value: 1500,
      unit: 'lb',
      range: [1200, 2000],
      source: "a wagon carried one bale's seed cotton, about 1,500 lb",
      mark: 'common practice',
    },
    topSquareFeet: {
      value: 48,
      unit: 'ft2',
      range: [40, 60],
      source: 'a farm wagon bed of about 4 ft x 12 ft',
      mark: 'assumption',
    },
    volumeCubicFeet: {
      value: 240,
      unit: 'ft3',
      range: [180, 300],
      source: 'the same bed with sideboards 5 ft high',
      mark: 'assumption',
    },
  },
} as const satisfies Record<ModuleKind, ModuleFacts>;

/** What a cover lets through. */
export interface CoverFacts {
  /** Share of the rain on the top that stays in the cotton. */
  readonly rainSoaksIn: Fact;
  /** Share of the cotton spoilt, first inch of rain. */
  readonly lostPerInch: Fact;
}
const lossSource = (dollars: string) =>
  `${dollars} (farm press reporting Simpson & Searcy, Byler, Anthony) on a bale of about $400, taken as a wet autumn of four to five inches`;
export const coverFacts = {
  good: {
    rainSoaksIn: {
      value: 0.01,
      unit: 'fraction',
      range: [0, 0.03],
      source: 'a sound cover on a well-formed module sheds the rain; few pinholes',
      mark: 'assumption',
    },
    lostPerInch: {
      value: 0.001,
      unit: '1/inch',
      range: [0, 0.003],
      source: 'nearly nothing is lost under a good cover (Searcy et al. 2010, in kind)',
      mark: 'assumption',
    },
  },
  poor: {
    rainSoaksIn: {
      value: 0.12,
      unit: 'fraction',
      range: [0.05, 0.2],
      source: 'a worn cover, water standing in the hollows',
      mark: 'assumption',
    },
    lostPerInch: {
      value: 0.012,
      unit: '1/inch',
      range: [0.008, 0.016],
      source: lossSource('good shape, poor cover: $20 a bale'),
      mark: 'derived',
    },
  },
  none: {
    rainSoaksIn: {
      value: 0.35,
      unit: 'fraction',
      range: [0.2, 0.5],
      source: 'the rest runs off or dries from the skin',
      mark: 'assumption',
    },
    lostPerInch: {
      value: 0.03,
      unit: '1/inch',
      range: [0.02, 0.04],
      source: lossSource('shape and cover both poor: $48 a bale'),
      mark: 'derived',
    },
  },
} as const satisfies Record<ModuleCover, CoverFacts>;

export const storageFacts = {
  waterKgPerCubicMetre: {
    value: 998.2,
    unit: 'kg/m3',
    range: [997.05, 999.1],
    source: 'water at 20 C, 998.207 in public tables (15 C 999.10, 25 C 997.05)',
    mark: 'published',
  },
  wettestPercent: {
    value: 25,
    unit: '% wet basis',
    range: [20, 30],
    source: 'a module wetter than this drains',
    mark: 'assumption',
  },
  driftPerDay: {
    value: 0.003,
    unit: '1/day',
    range: [0.001, 0.02],
    source: "a packed module dries over months: share of the way to the air's moisture in a day",
    mark: 'assumption',
  },
  stepsPerDay: {
    value: 8,
    unit: 'steps/day',
    range: [4, 24],
    source:
      'so fine that half the step moves the core by less than 0.2 F and the water by less than 0.003 points; by whole days a downpour moved it by 6 F',
    mark: 'derived',
  },
  spoilingDays: {
    value: 10,
    unit: 'days',
    range: [5, 20],
    source: 'wet cotton ginned or dried within a day or two has not rotted yet; the losses measured are of weeks',
    mark: 'assumption',
  },
  restingLintRegain: {
    value: 0.0756,
    unit: 'dry fraction',
    range: [0.07, 0.08],
    source: 'lint regain at 65 % humidity 7-8 % (Morton & Hearle)',
    mark: 'published',
  },
  restingSeedRegain: {
    value: 0.106,
    unit: 'dry fraction',
    range: [0.1, 0.112],
    source: 'cottonseed at 65 % humidity, 9.6 % wet basis (ASAE D245)',
    mark: 'memory',
  },
  restingTrashRegain: {
    value: 0.1,
    unit: 'dry fraction',
    range: [0.08, 0.12],
    source: 'between lint and seed',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;

const heating = 'Univ. of California Publ. 3352, quoted by New Mexico State extension';
export const heatingFacts = {
  startF: { value: 75, unit: 'F', range: [60, 90], source: 'an autumn afternoon', mark: 'assumption' },
  soundAtPercent: {
    value: 12,
    unit: '% wet basis',
    range: [12, 13],
    source: 'store below 12 % (Cotton Inc. 2021; Hughs et al. 2004)',
    mark: 'published',
  },
  riseAtSoundF: {
    value: 13,
    unit: 'F',
    range: [10, 15],
    source: `sound modules rise no more than 10-15 F and level off (${heating})`,
    mark: 'derived',
  },
  drySlopeF: { value: 3.5, unit: 'F/point', range: [2, 5], source: 'drier cotton warms less', mark: 'assumption' },
  leastRiseF: { value: 3, unit: 'F', range: [0, 6], source: 'any packed cotton warms a little', mark: 'assumption' },
  wetSlopeF: {
    value: 8,
    unit: 'F/point',
    range: [6, 12],
    source: `chosen so that cotton above 12-13 % gains 15-20 F or more in 5 to 7 days and very wet cotton passes 120 F (${heating})`,
    mark: 'assumption',
  },
  daysConstant: {
    value: 3,
    unit: 'days',
    range: [2, 4],
    source: 'most of the rise in the first 5 to 7 days (same source, in kind)',
    mark: 'assumption',
  },
  hottestF: {
    value: 150,
    unit: 'F',
    range: [130, 170],
    source: 'the moulds that make the heat die',
    mark: 'assumption',
  },
  ginSoonRiseF: {
    value: 15,
    unit: 'F',
    range: [15, 20],
    source: `a rise of 15-20 F or more is too wet: gin soon (${heating})`,
    mark: 'published',
  },
  ginNowF: {
    value: 120,
    unit: 'F',
    range: [110, 120],
    source: `reaching 120 F: gin at once (${heating})`,
    mark: 'published',
    note: 'some American guides say 110 F (memory)',
  },
} as const satisfies Record<string, Fact>;

export const colourFacts = {
  yellowsAbovePercent: {
    value: 13,
    unit: '% wet basis',
    range: [13, 14],
    source:
      'yellowness rises steeply above 13 % (Univ. of California Publ. 3352); above 14 % (Cotton Inc. on Curley et al. 1987)',
    mark: 'published',
  },
  yellowingPerPointDay: {
    value: 0.0092,
    unit: '1/(point day)',
    range: [0.008, 0.011],
    source: 'gives +61 to +78 % yellowness in 45 days at 16 % (Univ. of California Publ. 3352)',
    mark: 'derived',
  },
  yellowingLimit: {
    value: 1.2,
    unit: 'ratio',
    range: [1, 1.5],
    source: 'the deepest stain the grades know is about twice as yellow as white cotton',
    mark: 'assumption',
  },
  reflectanceLostPerYellowing: {
    value: 6,
    unit: 'Rd points',
    range: [3, 10],
    source: 'cotton that yellows in the heap also greys; size unknown',
    mark: 'assumption',
  },
} as const satisfies Record<string, Fact>;
