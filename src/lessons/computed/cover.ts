import { type ClothName, catalogue } from '../../model/cloth/catalogue-facts.ts';
import { tightnessFacts } from '../../model/cloth/tightness-facts.ts';
import { coarsestNeFor, listedCloth, warpNeOf } from '../listed-cloths.ts';
import type { Computed } from './computed.ts';

/** A count as the Federal Trade Commission's staff took it for an example: 300 threads of two plies, which were sold as twice that. */
const honestCount = 300;
const plies = 2;
const waysOfCloth = 2;

const percent = (name: ClothName) => listedCloth(name).coverFraction * 100;
/** Cover of a listed cloth, and its threads counted, with the mark of its construction. */
const cover = (name: ClothName) =>
  ({ as: 'percentage', value: () => percent(name), decimals: 0, restsOn: catalogue[name] }) satisfies Computed;
const count = (name: ClothName) =>
  ({ as: 'plain', value: () => listedCloth(name).threadCount, restsOn: catalogue[name] }) satisfies Computed;
/** What presses threads in an inch is assumed, so that no digit below is worth printing, Ne. */
const inflatedStep = 50;

export const coverQuantities = {
  'cover-quilting': cover('quilting'),
  'open-quilting': { as: 'plain', value: () => 100 - percent('quilting'), decimals: 0 },
  'cover-gauze': cover('gauze'),
  'cover-lawn': cover('lawn'),
  'cover-percale': cover('percale'),
  'ends-quilting': { as: 'plain', value: () => listedCloth('quilting').construction.endsPerInch },
  'count-quilting': count('quilting'),
  'count-percale': count('percale'),
  'count-lawn-cloth': count('lawn'),
  'count-honest': { as: 'plain', value: () => honestCount },
  'count-by-plies': { as: 'plain', value: () => honestCount * plies },
  'yarn-for-inflated': {
    as: 'yarnCount',
    value: () => Math.round(coarsestNeFor((honestCount * plies) / waysOfCloth, 'plain') / inflatedStep) * inflatedStep,
    restsOn: tightnessFacts.flattenedShare,
  },
  'yarn-quilting': { as: 'yarnCount', value: () => warpNeOf('quilting') },
} as const satisfies Readonly<Record<string, Computed>>;
