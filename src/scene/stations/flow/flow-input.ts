import type { DestinationAccount, MassEntry, SourceAccount } from '../../../model/ledger.ts';
import { parts } from '../../../model/lot.ts';
import type { StationId } from '../../../model/station.ts';
import type { BandStrip } from '../../cloth/band.ts';
import type { Shown } from '../../cloth/part-cloth.ts';
import type { MachineKind } from '../machines/draw-machine.ts';

export type InAccount = SourceAccount | 'lot';
export type OutAccount = DestinationAccount | 'lot';
/** Dry mass by part and water, kg. */
export type Masses = Pick<MassEntry, 'dryKg' | 'waterKg'>;

export interface FlowMachine {
  readonly id: string;
  readonly kind: MachineKind;
  /** What it took out, by the account it went to. */
  readonly removedByAccount: Readonly<Partial<Record<OutAccount, Masses>>>;
}

export interface MassFlow {
  readonly station: StationId;
  /** In the order the cotton meets them; at least one. */
  readonly machines: readonly FlowMachine[];
  readonly inflow: readonly MassEntry<InAccount>[];
  readonly outflow: readonly MassEntry<OutAccount>[];
  /** Width of one kilogram, px; left out, the widest that fits. */
  readonly pxPerKg?: number;
  /** One pound or one kilogram, kg: pieces stand for round numbers of it. */
  readonly unitKg: number;
  readonly size: { readonly width: number; readonly height: number };
  readonly labels: FlowLabels;
}

/** Words on the picture, already translated, numbers included. */
export interface FlowLabels {
  readonly in: Readonly<Partial<Record<InAccount, string>>>;
  readonly out: Readonly<Partial<Record<OutAccount, string>>>;
  /** Names of machines by id; shown where there is room. */
  readonly machines?: Readonly<Record<string, string>>;
  /** What a tuft and a bit stand for, and the mass from quilting row to quilting row. */
  readonly caption?: (legend: FlowLegend) => string;
}

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
