import { geometryFacts } from '../../model/cloth/facts.ts';
import { cutStretchPercent } from '../cut-on-grain.ts';
import type { Computed } from './computed.ts';

/** The most that the geometry gives in a direction. @param degrees from the warp */
const stretch = (degrees: number) =>
  ({ as: 'percentage', value: () => cutStretchPercent(degrees), decimals: 0 }) satisfies Computed;

export const grainQuantities = {
  'stretch-lengthwise': { ...stretch(0), restsOn: geometryFacts.warpCrimpPercent },
  'stretch-crosswise': { ...stretch(90), restsOn: geometryFacts.weftCrimpPercent },
  'stretch-bias': stretch(45),
  'stretch-off-grain': stretch(15),
} as const satisfies Readonly<Record<string, Computed>>;
