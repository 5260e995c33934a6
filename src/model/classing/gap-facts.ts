import type { Facts, FactTable } from '../fact.ts';

const texasTech = 'Year-to-date average cotton price estimates, West Texas, 2006-07, Texas Tech University';

/** Where the quotations end, and what is measured from. */
export const gapFacts = {
  lastReadOf54: {
    value: 32,
    unit: 'staple, 1/32 in',
    source: `${texasTech}: the row of tinged 54 was read up to here`,
    mark: 'published',
  },
  baseStaple: {
    value: 34,
    unit: 'staple, 1/32 in',
    source: 'base quality 41-4-34, AMS weekly cotton market review 2017-18',
    mark: 'published',
  },
  worstQuotedLeaf: {
    value: 7,
    unit: 'leaf grade',
    source: 'last leaf grade with a price, USDA-AMS Daily Spot Quotations; 8 is below grade (7 CFR 28.525)',
    mark: 'published',
  },
  shortestShared: {
    value: 26,
    unit: 'staple, 1/32 in',
    source: 'USDA-AMS Daily Spot Quotations, MP_CN006, 13 March 2025: one column for staples 26 to 31',
    mark: 'published',
  },
} as const satisfies Facts;

/** Colours not in the West Texas fit, and the one beside it that stands in. */
export const neighbourColours: FactTable<{ readonly colour: string; readonly standsIn: string }> = {
  rows: [
    { colour: '13', standsIn: '23' },
    { colour: '24', standsIn: '34' },
    { colour: '25', standsIn: '54' },
    { colour: '35', standsIn: '54' },
  ],
  unit: 'colour code',
  source: `${texasTech}: 23 and 33 are equal there, so 13 and 24 follow suit; yellow stained takes the last tinged`,
  mark: 'assumption',
};
