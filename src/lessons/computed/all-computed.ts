import { baleQuantities } from './bale.ts';
import { bollQuantities } from './boll.ts';
import { clothQuantities } from './cloth-quantities.ts';
import type { Computed } from './computed.ts';
import { fieldToBaleQuantities } from './field-to-bale.ts';
import { growthQuantities } from './growth.ts';
import { lengthQuantities } from './length.ts';
import { sectionQuantities } from './section.ts';
import { strengthQuantities } from './strength.ts';

const quantities = {
  ...fieldToBaleQuantities,
  ...lengthQuantities,
  ...sectionQuantities,
  ...strengthQuantities,
  ...growthQuantities,
  ...bollQuantities,
  ...baleQuantities,
  ...clothQuantities,
} as const;
export type ComputedId = keyof typeof quantities;
export const computedIds = Object.keys(quantities) as ComputedId[];

/** A computed quantity by its id; undefined for an unknown id. */
export const computedOf = (id: string): Computed | undefined => (quantities as Readonly<Record<string, Computed>>)[id];
