import type { Fibre } from '../fibre.ts';
import type { DestinationAccount, SourceAccount } from '../ledger.ts';
import { groupDryKg, type Lot, partMasses, totalWaterKg, type WaterMasses } from '../lot.ts';

export type Masses = Pick<Lot, 'dryKg' | 'waterKg'>;

/** One machine's balance: what entered (with anything added) equals what was removed and what went on. */
export interface MachineStep {
  readonly machine: string;
  readonly in: Masses;
  readonly added: readonly { readonly account: SourceAccount; readonly masses: Masses }[];
  readonly removed: readonly { readonly account: DestinationAccount; readonly masses: Masses }[];
  readonly out: Masses;
  readonly fibreBefore: Fibre;
  readonly fibreAfter: Fibre;
}

/** Water alone, as masses. */
export const waterOnly = (waterKg: WaterMasses): Masses => ({ dryKg: partMasses({}), waterKg });

/** Everything one account received over a line of machines, kg. */
export function removedTo(machines: readonly MachineStep[], account: DestinationAccount): Masses {
  const dryKg = { ...partMasses({}) } as Record<keyof Lot['dryKg'], number>;
  const waterKg = { lint: 0, seed: 0, trash: 0 };
  for (const { removed } of machines) {
    for (const { account: to, masses } of removed) {
      if (to !== account) continue;
      for (const part of Object.keys(dryKg) as (keyof typeof dryKg)[]) dryKg[part] += masses.dryKg[part];
      for (const group of Object.keys(waterKg) as (keyof typeof waterKg)[]) waterKg[group] += masses.waterKg[group];
    }
  }
  return { dryKg, waterKg };
}

/** Share of the foreign matter that entered and did not go on, 0 to 1; zero for clean cotton. */
export function trashRemovedFraction(before: Masses, after: Masses): number {
  const entered = groupDryKg(before.dryKg, 'trash');
  return entered > 0 ? 1 - groupDryKg(after.dryKg, 'trash') / entered : 0;
}

/** Moisture of everything together, % wet basis. */
export function moisturePercentOf(masses: Masses): number {
  const water = totalWaterKg(masses.waterKg);
  const all =
    groupDryKg(masses.dryKg, 'lint') + groupDryKg(masses.dryKg, 'seed') + groupDryKg(masses.dryKg, 'trash') + water;
  return all > 0 ? (100 * water) / all : 0;
}
