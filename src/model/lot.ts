import type { Fibre } from './fibre.ts';

/**
 * What a lot is made of. "seed" is gin-run seed with its linters; "lint" is ginnable lint; "leaf" is leaf and fine
 * trash; "motes" are undeveloped seeds. "size" (on warps) and "finish" come in at the mill.
 */
export const parts = ['lint', 'seed', 'burs', 'sticks', 'leaf', 'motes', 'dirt', 'size', 'finish'] as const;
export type Part = (typeof parts)[number];
/** The foreign matter among the parts. */
export const trashParts = ['burs', 'sticks', 'leaf', 'motes', 'dirt'] as const;
export type TrashPart = (typeof trashParts)[number];

/** Water is kept for each group of parts: a dryer treats lint, seed and trash differently. */
export const waterGroups = ['lint', 'seed', 'trash'] as const;
export type WaterGroup = (typeof waterGroups)[number];

export type PartMasses = Readonly<Record<Part, number>>;
export type WaterMasses = Readonly<Record<WaterGroup, number>>;

/** The one thing that travels: dry mass by part, water by group, and the fibre in the lint. Masses in kg. */
export interface Lot {
  readonly dryKg: PartMasses;
  readonly waterKg: WaterMasses;
  readonly fibre: Fibre;
}

const groups: Record<Part, WaterGroup> = {
  lint: 'lint',
  seed: 'seed',
  burs: 'trash',
  sticks: 'trash',
  leaf: 'trash',
  motes: 'trash',
  dirt: 'trash',
  size: 'lint',
  finish: 'lint',
};
/** The water group a part belongs to. Size and finish sit on the yarn, so they share the lint's water. */
export const waterGroupOf = (part: Part): WaterGroup => groups[part];

/** Part masses with every part not named at zero. */
export function partMasses(some: Partial<PartMasses>): PartMasses {
  const all = {} as Record<Part, number>;
  for (const part of parts) all[part] = some[part] ?? 0;
  return all;
}

/** Sum of the dry masses, kg. */
export function totalDryKg(masses: PartMasses): number {
  let sum = 0;
  for (const part of parts) sum += masses[part];
  return sum;
}

/** Sum of the water, kg. */
export const totalWaterKg = (water: WaterMasses): number => water.lint + water.seed + water.trash;

/** Everything on the scale: dry matter and water, kg. */
export const totalKg = (lot: Pick<Lot, 'dryKg' | 'waterKg'>): number =>
  totalDryKg(lot.dryKg) + totalWaterKg(lot.waterKg);

/** Dry mass of one water group, kg. */
export function groupDryKg(masses: PartMasses, group: WaterGroup): number {
  let sum = 0;
  for (const part of parts) if (groups[part] === group) sum += masses[part];
  return sum;
}

/** Moisture of one group, wet basis: water / (water + dry). Zero where the group is empty. */
export function moistureFraction(lot: Pick<Lot, 'dryKg' | 'waterKg'>, group: WaterGroup): number {
  const dry = groupDryKg(lot.dryKg, group);
  return dry > 0 ? lot.waterKg[group] / (dry + lot.waterKg[group]) : 0;
}

/** Water that brings a dry mass to a wet-basis moisture, kg. */
export const waterForMoisture = (dryKg: number, wetBasisFraction: number): number =>
  (dryKg * wetBasisFraction) / (1 - wetBasisFraction);

/** What a split gives: masses only, since the fibre of each side is the caller's business. */
export interface Split {
  readonly kept: Pick<Lot, 'dryKg' | 'waterKg'>;
  readonly removed: Pick<Lot, 'dryKg' | 'waterKg'>;
}

/**
 * Takes a fraction of each part out of a lot. Water follows its dry mass: every part of a group is equally damp.
 * @param lot the lot before
 * @param removedFraction share of each part that leaves, 0 to 1; a part not named stays
 */
export function splitLot(lot: Pick<Lot, 'dryKg' | 'waterKg'>, removedFraction: Partial<PartMasses>): Split {
  const keptDry = {} as Record<Part, number>;
  const removedDry = {} as Record<Part, number>;
  for (const part of parts) {
    const out = lot.dryKg[part] * (removedFraction[part] ?? 0);
    removedDry[part] = out;
    keptDry[part] = lot.dryKg[part] - out;
  }
  const keptWater = {} as Record<WaterGroup, number>;
  const removedWater = {} as Record<WaterGroup, number>;
  for (const group of waterGroups) {
    const before = groupDryKg(lot.dryKg, group);
    const share = before > 0 ? groupDryKg(removedDry, group) / before : 0;
    removedWater[group] = lot.waterKg[group] * share;
    keptWater[group] = lot.waterKg[group] - removedWater[group];
  }
  return { kept: { dryKg: keptDry, waterKg: keptWater }, removed: { dryKg: removedDry, waterKg: removedWater } };
}

/** Adds two sets of masses, part by part and group by group. */
export function addMasses(
  a: Pick<Lot, 'dryKg' | 'waterKg'>,
  b: Pick<Lot, 'dryKg' | 'waterKg'>,
): Pick<Lot, 'dryKg' | 'waterKg'> {
  const dryKg = {} as Record<Part, number>;
  for (const part of parts) dryKg[part] = a.dryKg[part] + b.dryKg[part];
  const waterKg = {} as Record<WaterGroup, number>;
  for (const group of waterGroups) waterKg[group] = a.waterKg[group] + b.waterKg[group];
  return { dryKg, waterKg };
}

/** Multiplies every mass of a lot, for example from a whole field to one bale's share of it. */
export function scaleMasses(lot: Pick<Lot, 'dryKg' | 'waterKg'>, factor: number): Pick<Lot, 'dryKg' | 'waterKg'> {
  const dryKg = {} as Record<Part, number>;
  for (const part of parts) dryKg[part] = lot.dryKg[part] * factor;
  const waterKg = {} as Record<WaterGroup, number>;
  for (const group of waterGroups) waterKg[group] = lot.waterKg[group] * factor;
  return { dryKg, waterKg };
}
