import type { Facts } from '../fact.ts';

/** Where the bales of the United States go. */
export const tradeFacts = {
  exportedPercent: {
    value: 70,
    unit: '%',
    range: [60, 90],
    source:
      'USDA Economic Research Service, chart "More U.S. cotton is exported than milled domestically", 2016: exports are over 70 percent of the use of U.S. cotton; under 40 in the 1990s',
    mark: 'published',
    note: 'the share moves with the crop and the trade of each year',
  },
} as const satisfies Facts;
