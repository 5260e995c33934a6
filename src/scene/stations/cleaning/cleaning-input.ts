import type { FlowLegend, Masses } from '../flow/flow-input.ts';
import type { InEntry, OutEntry } from '../flow/labelled-entry.ts';

/** What a machine of the line looks like. A wagon is unloaded by a suction pipe, a module taken apart by spiked cylinders. */
export type LineKind = 'moduleFeeder' | 'suctionPipe' | 'dryer' | 'cylinderCleaner' | 'stickMachine';

/** What a machine took out of the cotton, with its words. */
export interface Taken {
  readonly masses: Masses;
  /** A share of the work, 0 to 1, as what has been taken by then; the amounts of all machines add to the ledger's. */
  readonly amount: (share: number) => string;
}

/** A machine on the way to the distributor. */
export interface LineMachine {
  readonly id: string;
  readonly kind: LineKind;
  readonly name: string;
  /** Trash; null for a machine that takes none. */
  readonly took: Taken | null;
  /** Water that left as vapour; null for a machine that does not dry. */
  readonly driedOff: Masses | null;
  readonly wentOn: Masses;
}

export type Wheel = 'disperser' | 'cylinder' | 'extractorSaw' | 'brush';

/** One bale's worth of seed cotton on its way through the cleaning line. Words are already translated. */
export interface CleaningInput {
  readonly line: readonly LineMachine[];
  readonly feeder: { readonly name: string; readonly took: Taken };
  readonly distributor: { readonly name: string };
  readonly seedCotton: InEntry;
  readonly evaporated: OutEntry | null;
  readonly trash: OutEntry;
  readonly cleaned: OutEntry;
  /** What runs past the feeder and comes round again. */
  readonly overflow: { readonly masses: Masses; readonly name: string; readonly amount: string };
  /** One pound or one kilogram, kg. */
  readonly unitKg: number;
  readonly size: { readonly width: number; readonly height: number };
  /** True turns a minute, and how many times slower they are drawn. */
  readonly turning: Readonly<Record<Wheel, number>> & { readonly slowedBy: number };
  readonly labels: {
    /** Share of the trash that is out, as a number and in words. */
    readonly outShare: string;
    readonly outWords: string;
    /** Names in a few letters, for a small picture. */
    readonly short: Readonly<Record<'in' | 'trash' | 'cleaned' | 'evaporated', string>>;
    /** What each turning part shows: its quantity and rate. */
    readonly shows: Readonly<Record<Wheel, string>>;
    readonly caption: (legend: FlowLegend) => string;
    readonly captionShort: (legend: FlowLegend) => string;
  };
}
