import type { DestinationAccount, MassEntry, SourceAccount } from '../../../model/ledger.ts';
import { parts } from '../../../model/lot.ts';
import type { BandStrip } from '../../cloth/band.ts';
import type { Shown } from '../../cloth/part-cloth.ts';

export type InAccount = SourceAccount | 'lot';
export type OutAccount = DestinationAccount | 'lot';
/** Dry mass by part and water, kg. */
export type Masses = Pick<MassEntry, 'dryKg' | 'waterKg'>;

export interface FlowLegend {
  /** One tuft, seed or drop, kg. */
  readonly tuftKg: number;
  /** One bit of trash, kg. */
  readonly bitKg: number;
  readonly rowKg: number;
}

/** Order of the strips in every band, top to bottom. */
export const shownParts: readonly Shown[] = [...parts, 'water'];

export const shownKg = (masses: Masses, part: Shown): number =>
  part === 'water' ? masses.waterKg : masses.dryKg[part];

export function massOf(masses: Masses): number {
  let sum = 0;
  for (const part of shownParts) sum += shownKg(masses, part);
  return sum;
}

/** The strips of a band: width = mass times scale. */
export const stripsOf = (masses: Masses, pxPerKg: number): BandStrip[] =>
  shownParts.map((part) => ({ part, width: shownKg(masses, part) * pxPerKg }));

/** One set of masses less another, held at zero. */
export function less(from: Masses, taken: Masses): Masses {
  const dryKg = { ...from.dryKg };
  for (const part of parts) dryKg[part] = Math.max(0, from.dryKg[part] - taken.dryKg[part]);
  return { dryKg, waterKg: Math.max(0, from.waterKg - taken.waterKg) };
}

export function plus(one: Masses, other: Masses): Masses {
  const dryKg = { ...one.dryKg };
  for (const part of parts) dryKg[part] = one.dryKg[part] + other.dryKg[part];
  return { dryKg, waterKg: one.waterKg + other.waterKg };
}
