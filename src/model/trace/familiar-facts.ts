import type { Facts } from '../fact.ts';

const unit = 'ft';

/** Things whose size most people know, to lay a field beside: width and length. */
export const familiarFacts = {
  towel: {
    width: { value: 2.25, unit, range: [2, 2.5], source: 'a bath towel of 27 x 52 in', mark: 'common practice' },
    length: { value: 4.33, unit, range: [4, 4.7], source: 'a bath towel of 27 x 52 in', mark: 'common practice' },
  },
  plywood: {
    width: { value: 4, unit, range: [4, 5], source: 'the usual sheet of plywood, 4 x 8 ft', mark: 'common practice' },
    length: { value: 8, unit, range: [8, 10], source: 'the usual sheet of plywood, 4 x 8 ft', mark: 'common practice' },
  },
  parkingSpace: {
    width: {
      value: 9,
      unit,
      range: [8, 10],
      source: 'a marked stall of 9 x 18 ft; towns differ',
      mark: 'common practice',
    },
    length: {
      value: 18,
      unit,
      range: [16, 20],
      source: 'a marked stall of 9 x 18 ft; towns differ',
      mark: 'common practice',
    },
  },
  tennisCourt: {
    width: { value: 36, unit, range: [36, 36], source: 'rules of tennis, the doubles court', mark: 'memory' },
    length: { value: 78, unit, range: [78, 78], source: 'rules of tennis, the court', mark: 'memory' },
  },
  footballField: {
    width: { value: 160, unit, range: [160, 160], source: 'rules of American football', mark: 'memory' },
    length: {
      value: 360,
      unit,
      range: [360, 360],
      source: 'rules of American football, with both end zones',
      mark: 'memory',
    },
  },
} as const satisfies Readonly<Record<string, Facts>>;
