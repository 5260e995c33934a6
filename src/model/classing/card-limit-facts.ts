import type { Mark } from '../fact.ts';

/** What a typed class card may hold. */
export const cardLimitTable = {
  limits: {
    lengthIn: { low: 0.5, high: 1.8, unit: 'in' },
    uniformityPercent: { low: 70, high: 92, unit: '%' },
    strengthGPerTex: { low: 15, high: 55, unit: 'g/tex' },
    micronaire: { low: 2, high: 7, unit: 'micronaire' },
    reflectanceRd: { low: 40, high: 90, unit: 'Rd' },
    yellownessB: { low: 4, high: 20, unit: '+b' },
    leaf: { low: 1, high: 8, unit: 'leaf grade' },
    netLb: { low: 200, high: 700, unit: 'lb' },
    moisturePercent: { low: 0, high: 25, unit: '% wet basis' },
  },
  unit: 'as said beside each',
  source: 'wider than any cotton sold, so that only slips of the pen are refused',
  mark: 'assumption' satisfies Mark,
} as const;

/** Pima's leaf grades end one earlier than upland's. */
export const pimaLeafGrades = {
  below: 7,
  unit: 'leaf grade',
  source: 'Classification of American Pima, USDA-AMS: leaf 1 to 6, 7 below grade',
  mark: 'published' satisfies Mark,
} as const;
