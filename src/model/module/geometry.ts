import { kilogramsFromPounds } from '../units.ts';
import { type ModuleKind, moduleFacts } from './facts.ts';

/** How many modules a lot makes, at least one. */
export const moduleCountFor = (seedCottonKg: number, kind: ModuleKind): number =>
  Math.max(1, Math.round(seedCottonKg / kilogramsFromPounds(moduleFacts[kind].seedCottonLb.value)));

/** How tightly a module of a weight is packed, lb/ft3. */
export const packingLbPerCubicFoot = (seedCottonLb: number, kind: ModuleKind): number =>
  seedCottonLb / moduleFacts[kind].volumeCubicFeet.value;
