import { washTable } from '../../model/cloth/wash-facts.ts';
import { INCHES_PER_YARD } from '../../model/units.ts';
import { washedCloth, washRow } from '../washed-cloth.ts';
import type { Computed } from './computed.ts';

const quilting = () => washedCloth('quilting');
/** Lengths that a reader measures: a cut of cloth, and the side of a square. */
const cutYards = 3;
const sideInches = 10;

/** What is shown of the table of washes carries the table's mark. */
const read = (value: () => number, as: Computed['as'] = 'percentage', decimals = 0) =>
  ({ as, value, decimals, restsOn: washTable }) satisfies Computed;

export const washQuantities = {
  'wash-lengthwise': read(() => quilting().lengthPercent),
  'wash-crosswise': read(() => quilting().widthPercent),
  'wash-lengthwise-low': read(() => quilting().lengthRange[0]),
  'wash-lengthwise-high': read(() => quilting().lengthRange[1]),
  'wash-gauze': read(() => washedCloth('gauze').lengthPercent),
  'wash-off-the-loom': read(() => washedCloth('loomState').lengthPercent),
  'wash-preshrunk': read(() => washRow('compacted').lengthPercent),
  'lost-of-three-yards': read(() => (cutYards * INCHES_PER_YARD * quilting().lengthPercent) / 100, 'length', 1),
  'lost-of-ten-inches': read(() => (sideInches * quilting().lengthPercent) / 100, 'length', 1),
  'thread-of-ten-inches': {
    as: 'length',
    value: () => sideInches * (1 + quilting().bought.warpCrimpPercent / 100),
    decimals: 1,
  },
  'crimp-before-wash': { as: 'percentage', value: () => quilting().bought.warpCrimpPercent, decimals: 0 },
  'crimp-after-wash': read(() => quilting().washed.warpCrimpPercent),
  'heavier-by-wash': read(() => 100 * (quilting().washedGrams / quilting().boughtGrams - 1)),
} as const satisfies Readonly<Record<string, Computed>>;
