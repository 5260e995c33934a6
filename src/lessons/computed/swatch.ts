import type { ClothName } from '../../model/cloth/catalogue-facts.ts';
import { listedCloth } from '../listed-cloths.ts';
import type { Computed } from './computed.ts';

const weight = (name: ClothName) => listedCloth(name).gramsPerSquareMetre;
const layersOfDoubleGauze = 2;

export const swatchQuantities = {
  'weight-quilting': { as: 'clothWeight', value: () => weight('quilting') },
  'weight-muslin': { as: 'clothWeight', value: () => weight('muslin') },
  'weight-lawn': { as: 'clothWeight', value: () => weight('lawn') },
  'weight-voile': { as: 'clothWeight', value: () => weight('voile') },
  'weight-double-gauze': { as: 'clothWeight', value: () => weight('gauze') * layersOfDoubleGauze },
  'weight-denim': { as: 'clothWeight', value: () => weight('denim') },
  'weight-canvas': { as: 'clothWeight', value: () => weight('duckTen') },
  'denim-over-quilting': { as: 'plain', value: () => weight('denim') / weight('quilting'), decimals: 1 },
} as const satisfies Readonly<Record<string, Computed>>;
