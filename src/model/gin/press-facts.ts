import type { Fact } from '../fact.ts';

/** The press and the bale. */
export const pressFacts = {
  tradeBaleLb: {
    value: 500,
    unit: 'lb',
    source: 'the weight of bale for which most figures of gin waste and seed are published (USDA-ARS papers)',
    mark: 'published',
  },
  dampestBalePercent: {
    value: 7.5,
    unit: '% wet basis',
    source: 'bales at most 7.5 % (National Cotton Council policy, in Hughs et al. 2004)',
    mark: 'published',
  },
  weightSpreadLb: {
    value: 4,
    unit: 'lb',
    range: [3, 7],
    source: 'gross weights such as 489, 495, 503 in one lot',
    mark: 'common practice',
  },
  weightLimitLb: {
    value: 8,
    unit: 'lb',
    range: [6, 15],
    source: 'pressmen trip the press by eye and scale',
    mark: 'common practice',
  },
  oddWeightShare: {
    value: 0.05,
    unit: 'fraction',
    range: [0.03, 0.1],
    source:
      'how far the bales of a lot may all lie from the wanted weight; beyond that the last bale takes the difference',
    mark: 'assumption',
  },
  remnantShare: {
    value: 0.5,
    unit: 'fraction',
    range: [0.3, 0.7],
    source: 'a last bale lighter than this share of the mark is a remnant, which a gin holds over for the next lot',
    mark: 'assumption',
  },
  universalVolumeCubicFeet: {
    value: 17,
    unit: 'ft3',
    source:
      'Universal Density bale 17 ft3 (National Cotton Council bale description); an effective volume: the 33-in. box is 21 ft3',
    mark: 'published',
    note: "the page's 28 lb/ft3 and 472 kg/m3 differ by 5 %",
  },
  pressForceLb: {
    value: 854021,
    unit: 'lbf',
    source: 'to about 40 lb/ft3, 500 lb at about 5 % (Anthony 1999, Beltwide 674)',
    mark: 'published',
  },
  pressDensity: { value: 40, unit: 'lb/ft3', source: 'same', mark: 'published' },
  pressNetLb: { value: 500, unit: 'lb', source: 'same', mark: 'published' },
  pressMoisturePercent: { value: 5, unit: '% wet basis', source: 'same', mark: 'published' },
  pressExponent: {
    value: 3,
    unit: 'ratio',
    range: [2.5, 3.5],
    source:
      'log force is linear in log density (USDA Tech. Bull. 1546); its slope is not published there in a source at hand',
    mark: 'assumption',
  },
  pressSoftening: {
    value: 0.06,
    unit: '1/point',
    range: [0.02, 0.1],
    source: 'damper lint presses easier (USDA Tech. Bull. 1546, in kind)',
    mark: 'assumption',
  },
  insertForceLb: {
    value: 685197,
    unit: 'lbf',
    source: 'with 1.5-in. raised inserts on the platen (Anthony 1999)',
    mark: 'published',
  },
  ginCodeDigits: {
    value: 5,
    unit: 'digits',
    source:
      'two of the classing office and three of the gin (USDA-AMS, Understanding the Data, 1994); given by USDA (Permanent Bale Identification, cotton.org)',
    mark: 'published',
  },
  tagDigits: {
    value: 7,
    unit: 'digits',
    source:
      'ten million running numbers a gin; none again within five years (Permanent Bale Identification, cotton.org)',
    mark: 'published',
  },
  thirtiesTareLb: {
    value: 22,
    unit: 'lb',
    range: [20, 24],
    source: 'jute bagging and six steel ties on a 500-lb gross bale',
    mark: 'memory',
  },
} as const satisfies Record<string, Fact>;

/** The shape of a tied bale: today's Universal Density bale, and the flat bale of the 1930s as it left the gin. */
export const baleShapeFacts = {
  universalLongIn: {
    value: 55,
    unit: 'in',
    range: [54, 55],
    source: 'Universal Density bale, 54-55 by 20-21 in. (National Cotton Council bale description)',
    mark: 'published',
  },
  universalWideIn: { value: 21, unit: 'in', range: [20, 21], source: 'same', mark: 'published' },
  universalThickIn: {
    value: 33,
    unit: 'in',
    range: [28, 34],
    source: 'same: at the bulge at most 33 in. on average, none over 34',
    mark: 'published',
  },
  flatLongIn: {
    value: 55,
    unit: 'in',
    range: [54, 56],
    source: 'flat bale, about 12 lb/ft3 (USDA Agriculture Handbook 503)',
    mark: 'memory',
  },
  flatWideIn: { value: 28, unit: 'in', range: [27, 28], source: 'same', mark: 'memory' },
  flatThickIn: { value: 46, unit: 'in', range: [44, 48], source: 'same', mark: 'memory' },
  ties: {
    value: 6,
    unit: 'count',
    range: [6, 8],
    source: 'six straps or wires hold a bale, eight where they are thinner; six steel ties in the 1930s',
    mark: 'common practice',
  },
} as const satisfies Record<string, Fact>;

/** Tare by wrap and strap: plastic (PET) straps, six or eight wires. */
export const baleTareLb = {
  wovenPlastic: { pet: 2, wire6: 4, wire8: 5 },
  film: { pet: 3, wire6: 4, wire8: 5 },
  lightCotton: { pet: 3, wire6: 4, wire8: 5 },
  cottonBagging: { pet: 4, wire6: 6, wire8: 7 },
  unit: 'lb',
  source:
    "National Cotton Council specifications 2023-24, section 3.1; the table's layout was damaged where it was read",
  mark: 'published',
} as const;
export type BaleWrap = 'wovenPlastic' | 'film' | 'lightCotton' | 'cottonBagging';
export type BaleStrap = 'pet' | 'wire6' | 'wire8';
