import type { Facts } from '../fact.ts';

/** Fees and prices of the present, each from the last year that was read. The year stands beside the value. */
export const presentMoney = {
  pimaLoanCentsPerLb: {
    value: 79.77,
    unit: 'cents/lb',
    source: 'extra-long staple loan rate, USDA Farm Service Agency, 2006, 2007, 2016 and 2017',
    mark: 'published',
    note: 'the loan rate of base quality, not a market price; no Pima differences were read',
  },
  pimaLoanYear: { value: 2017, unit: 'year', source: 'USDA Farm Service Agency', mark: 'published' },
  classFeeUsdPerBale: {
    value: 2.2,
    unit: 'USD/bale',
    range: [1.45, 2.5],
    source: 'AMS classing fees, Federal Register 2010-14582, 2013-12651',
    mark: 'published',
  },
  classFeeYear: { value: 2013, unit: 'year', source: 'Federal Register 2013-12651', mark: 'published' },
  ginChargeUsdPer480Lb: {
    value: 43.28,
    unit: 'USD per 480-lb bale',
    range: [42.5, 50.09],
    source: 'Cotton Ginning Charges 1993/94, USDA ERS Statistical Bulletin 918 (1995)',
    mark: 'published',
  },
  ginChargeYear: { value: 1994, unit: 'year', source: 'USDA ERS Statistical Bulletin 918', mark: 'published' },
  storageUsdPerBaleMonth: {
    value: 2.61,
    unit: 'USD/bale/month',
    range: [2, 5],
    source: 'Commodity Credit Corporation storage proposal 2006 (mean of 2005), farm press',
    mark: 'published',
  },
  storageYear: {
    value: 2005,
    unit: 'year',
    source: 'Commodity Credit Corporation storage proposal 2006',
    mark: 'published',
  },
  seedUsdPerTon: {
    value: 245,
    unit: 'USD/short ton',
    range: [153, 350],
    source: 'lint and seed value sheet, September 2011',
    mark: 'published',
  },
  seedYear: { value: 2011, unit: 'year', source: 'lint and seed value sheet, September 2011', mark: 'published' },
} as const satisfies Facts;

/** The 1930s: lint and seed come from the season-average table for this crop year. */
export const thirtiesMoney = {
  cropYear: {
    value: 1937,
    unit: 'year',
    range: [1930, 1939],
    source: 'the crop year chosen for the 1930s scenario',
    mark: 'assumption',
  },
  ginChargeUsdPer480Lb: {
    value: 5,
    unit: 'USD per 480-lb bale',
    range: [3.5, 6],
    source: 'ginning with bagging and ties in the 1930s, USDA reports on ginning charges',
    mark: 'memory',
  },
  pickingUsdPerCwt: {
    value: 0.75,
    unit: 'USD per 100 lb of seed cotton',
    range: [0.75, 1.25],
    source:
      'about 75 cents in the Depression (pickers of Hickman County, Kentucky, in its Gazette, 9 August 1990); 1 to 1.25 offered near Memphis in 1936, the most since 1929 (Time, 21 September 1936)',
    mark: 'published',
  },
  storageUsdPerBaleMonth: {
    value: 0.25,
    unit: 'USD/bale/month',
    range: [0.15, 0.4],
    source: 'warehouse rates of the 1930s',
    mark: 'memory',
  },
} as const satisfies Facts;
