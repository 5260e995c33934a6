import { kilogramsFromPounds } from '../units.ts';
import { type ModuleKind, moduleFacts } from './facts.ts';

/** How many modules a lot makes, at least one. */
export const moduleCountFor = (seedCottonKg: number, kind: ModuleKind): number =>
  Math.max(1, Math.round(seedCottonKg / kilogramsFromPounds(moduleFacts[kind].seedCottonLb.value)));

/** How tightly a module of a weight is packed, lb/ft3. */
export const packingLbPerCubicFoot = (seedCottonLb: number, kind: ModuleKind): number =>
  seedCottonLb / moduleFacts[kind].volumeCubicFeet.value;

/** Feet; the length of a wagon's bed does not follow from the facts. */
interface ModuleFeet {
  readonly high: number;
  readonly long: number | null;
}

/**
 * How high a module stands and how long it lies, ft, from its top and its volume: a round one's diameter and width, a long
 * one's height and length with a square section, the height of a wagon's bed.
 */
export function moduleFeet(kind: ModuleKind): ModuleFeet {
  const top = moduleFacts[kind].topSquareFeet.value;
  const volume = moduleFacts[kind].volumeCubicFeet.value;
  if (kind === 'round') {
    // Volume is a quarter of pi times diameter squared times width, and the top is diameter times width.
    const diameter = (2 * 2 * volume) / (Math.PI * top);
    return { high: diameter, long: top / diameter };
  }
  const high = volume / top;
  return { high, long: kind === 'conventional' ? top / high : null };
}
