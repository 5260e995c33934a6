import { clothWeightFacts } from './cloth-weight-facts.ts';

export type ClothName = keyof typeof clothWeightFacts;
/** The named cloths, lightest first in their facts. */
export const clothNames = Object.keys(clothWeightFacts) as readonly ClothName[];

/** Weight of a named cloth, oz/yd2; undefined for a name that is not in the list. */
export const clothOunces = (name: string): number | undefined =>
  Object.hasOwn(clothWeightFacts, name) ? clothWeightFacts[name as ClothName].value : undefined;
