import { coverQuantities } from './cover.ts';
import { grainQuantities } from './grain.ts';
import { swatchQuantities } from './swatch.ts';
import { threadQuantities } from './thread.ts';
import { washQuantities } from './wash.ts';
import { yarnNumberQuantities } from './yarn-number.ts';

/** Numbers of the lessons on thread and cloth. */
export const clothQuantities = {
  ...threadQuantities,
  ...yarnNumberQuantities,
  ...coverQuantities,
  ...grainQuantities,
  ...swatchQuantities,
  ...washQuantities,
} as const;
