import { cutStretchPercent } from '../cut-on-grain.ts';
import type { Computed } from './computed.ts';

export const grainQuantities = {
  'stretch-lengthwise': { as: 'percentage', value: () => cutStretchPercent(0), decimals: 0 },
  'stretch-crosswise': { as: 'percentage', value: () => cutStretchPercent(90), decimals: 0 },
  'stretch-bias': { as: 'percentage', value: () => cutStretchPercent(45), decimals: 0 },
  'stretch-off-grain': { as: 'percentage', value: () => cutStretchPercent(15), decimals: 0 },
} as const satisfies Readonly<Record<string, Computed>>;
