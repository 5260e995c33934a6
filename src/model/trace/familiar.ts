import { METRES_PER_FOOT } from '../units.ts';
import { familiarFacts } from './familiar-facts.ts';

export type FamiliarId = keyof typeof familiarFacts;

/** A thing whose size most people know. */
export interface Familiar {
  readonly id: FamiliarId;
  readonly widthFeet: number;
  readonly lengthFeet: number;
  readonly squareMetres: number;
}

/** A thing of the list. */
export function familiarOf(id: FamiliarId): Familiar {
  const { width, length } = familiarFacts[id];
  return {
    id,
    widthFeet: width.value,
    lengthFeet: length.value,
    squareMetres: width.value * length.value * METRES_PER_FOOT ** 2,
  };
}

/** The largest familiar thing that is no larger than a field, square metres; the smallest there is for a field smaller still. */
export function familiarFor(squareMetres: number): Familiar {
  const all = (Object.keys(familiarFacts) as FamiliarId[])
    .map(familiarOf)
    .sort((a, b) => a.squareMetres - b.squareMetres);
  return all.filter((each) => each.squareMetres <= squareMetres).at(-1) ?? all[0]!;
}
