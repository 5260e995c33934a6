import { type ClothName, catalogue } from '../../model/cloth/catalogue-facts.ts';
import { listedCloth } from '../listed-cloths.ts';
import type { Computed } from './computed.ts';

const grams = (name: ClothName) => listedCloth(name).gramsPerSquareMetre;
/** Weight of a listed cloth, with the mark of its construction. */
const weight = (name: ClothName) =>
  ({ as: 'clothWeight', value: () => grams(name), restsOn: catalogue[name] }) satisfies Computed;

export const swatchQuantities = {
  'weight-quilting': weight('quilting'),
  'weight-muslin': weight('muslin'),
  'weight-lawn': weight('lawn'),
  'weight-voile': weight('voile'),
  'weight-denim': weight('denim'),
  'weight-canvas': weight('duckTen'),
  'denim-over-quilting': {
    as: 'plain',
    value: () => grams('denim') / grams('quilting'),
    decimals: 1,
    restsOn: catalogue.denim,
  },
} as const satisfies Readonly<Record<string, Computed>>;
