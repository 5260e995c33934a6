import { groupDryKg, type Lot, type WaterGroup, waterGroups } from './lot.ts';

/** A conditioned lot, and the water that passed to or from the air. */
export interface Conditioned {
  readonly masses: Pick<Lot, 'dryKg' | 'waterKg'>;
  readonly takenUpKg: number;
  readonly evaporatedKg: number;
}

/** Leaves a lot in the air until every part holds its regain (water per dry mass). */
export function condition(masses: Pick<Lot, 'dryKg' | 'waterKg'>, regain: number): Conditioned {
  const waterKg = {} as Record<WaterGroup, number>;
  let takenUpKg = 0;
  let evaporatedKg = 0;
  for (const group of waterGroups) {
    waterKg[group] = groupDryKg(masses.dryKg, group) * regain;
    const change = waterKg[group] - masses.waterKg[group];
    if (change > 0) takenUpKg += change;
    else evaporatedKg -= change;
  }
  return { masses: { dryKg: masses.dryKg, waterKg }, takenUpKg, evaporatedKg };
}
