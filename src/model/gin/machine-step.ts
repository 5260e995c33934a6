import type { Fibre } from '../fibre.ts';
import type { DestinationAccount, SourceAccount } from '../ledger.ts';
import { addMasses, groupDryKg, type Lot, partMasses, type WaterMasses } from '../lot.ts';

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

const nothing: Masses = waterOnly({ lint: 0, seed: 0, trash: 0 });

/** Everything one account received over a line of machines, kg. */
export const removedTo = (machines: readonly MachineStep[], account: DestinationAccount): Masses =>
  machines
    .flatMap(({ removed }) => removed)
    .reduce((sum, { account: to, masses }) => (to === account ? addMasses(sum, masses) : sum), nothing);

/** Share of the foreign matter that entered and did not go on, 0 to 1; zero for clean cotton. */
export function trashRemovedFraction(before: Masses, after: Masses): number {
  const entered = groupDryKg(before.dryKg, 'trash');
  return entered > 0 ? 1 - groupDryKg(after.dryKg, 'trash') / entered : 0;
}
