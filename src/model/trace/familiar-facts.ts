import type { Facts } from '../fact.ts';

const unit = 'ft';
const tennis = 'International Tennis Federation, Technical Booklet 2015, table 5: 10.973 by 23.774 m';
const football =
  'college and professional playing rules of American football, playing area: 100 yd between end zones of 10 yd, 53 1/3 yd wide (opensourcesports.io)';

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
    width: {
      value: 36,
      unit,
      range: [35.96, 36.04],
      source: `${tennis}, between doubles sidelines`,
      mark: 'published',
    },
    length: { value: 78, unit, range: [77.92, 78.08], source: `${tennis}, between baselines`, mark: 'published' },
  },
  footballField: {
    width: { value: 160, unit, range: [160, 160], source: football, mark: 'published' },
    length: { value: 360, unit, range: [360, 360], source: `${football}, with both end zones`, mark: 'published' },
  },
} as const satisfies Readonly<Record<string, Facts>>;
