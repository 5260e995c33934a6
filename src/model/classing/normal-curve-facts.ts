import type { Facts, FactTable } from '../fact.ts';

const handbook = 'Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.26';

/** Series for the area under the normal curve: powers 1 to 5 of t = 1 / (1 + p x). Its error stays below 1.5e-7. */
export const errorFunctionSeries: FactTable<number> = {
  rows: [0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429],
  unit: '1',
  source: handbook,
  mark: 'published',
};

export const normalCurve = {
  seriesScale: { value: 0.3275911, unit: '1', source: `${handbook}, p`, mark: 'published' },
  gammaRoot: {
    value: 3,
    unit: 'power',
    source: 'the cube root of a gamma number is nearly normal (Wilson and Hilferty 1931, Proc. Nat. Acad. Sci. 17:684)',
    mark: 'published',
  },
} as const satisfies Facts;
