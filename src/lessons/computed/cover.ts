import type { ClothName } from '../../model/cloth/catalogue-facts.ts';
import { coarsestNeFor, listedCloth, warpNeOf } from '../listed-cloths.ts';
import type { Computed } from './computed.ts';

/** A count as the Federal Trade Commission's staff took it for an example: 300 threads of two plies, which were sold as twice that. */
const honestCount = 300;
const plies = 2;
const waysOfCloth = 2;

const cover = (name: ClothName) => listedCloth(name).coverFraction * 100;

export const coverQuantities = {
  'cover-quilting': { as: 'percentage', value: () => cover('quilting'), decimals: 0 },
  'open-quilting': { as: 'plain', value: () => 100 - cover('quilting'), decimals: 0 },
  'cover-gauze': { as: 'percentage', value: () => cover('gauze'), decimals: 0 },
  'cover-lawn': { as: 'percentage', value: () => cover('lawn'), decimals: 0 },
  'cover-percale': { as: 'percentage', value: () => cover('percale'), decimals: 0 },
  'ends-quilting': { as: 'plain', value: () => listedCloth('quilting').construction.endsPerInch },
  'count-quilting': { as: 'plain', value: () => listedCloth('quilting').threadCount },
  'count-percale': { as: 'plain', value: () => listedCloth('percale').threadCount },
  'count-lawn-cloth': { as: 'plain', value: () => listedCloth('lawn').threadCount },
  'count-honest': { as: 'plain', value: () => honestCount },
  'count-by-plies': { as: 'plain', value: () => honestCount * plies },
  'yarn-for-inflated': {
    as: 'yarnCount',
    value: () => coarsestNeFor((honestCount * plies) / waysOfCloth, 'plain'),
  },
  'yarn-quilting': { as: 'yarnCount', value: () => warpNeOf('quilting') },
} as const satisfies Readonly<Record<string, Computed>>;
