import type { InAccount, Masses, OutAccount } from '../flow/flow-input.ts';

/** A machine of the preparation, in the order the lint meets them. */
export type PrepareId = 'blowroom' | 'card' | 'comber' | 'drawing';
/** What turns. */
export type TurningId = 'beater' | 'card' | 'comber' | 'spindle' | 'openingRoller' | 'rotor';

/** What the spinning mill shows. Masses in kg for one bale's worth, lengths in millimetres. */
export interface SpinningScene {
  readonly size: { readonly width: number; readonly height: number };
  readonly system: 'ring' | 'rotor';
  readonly machines: readonly PrepareId[];
  /** Fibres side by side in a section of the yarn that is wanted. */
  readonly fibres: number;
  /** Lengths of as many of its fibres, in any order. */
  readonly fibreLengthsMm: readonly number[];
  /** Null where it breaks. */
  readonly yarn: null | { readonly diameterMm: number; readonly turnsPerMm: number };
  readonly inflow: readonly { readonly account: InAccount; readonly masses: Masses }[];
  readonly outflow: readonly { readonly account: OutAccount; readonly masses: Masses }[];
  readonly unitKg: number;
  /** Smallest division of the ruler, mm. */
  readonly rulerTickMm: number;
  /** Turns a minute. */
  readonly speeds: Readonly<Record<TurningId, number>>;
  readonly labels: SpinningLabels;
}

/** Words on the picture, already translated, numbers included. */
export interface SpinningLabels {
  readonly in: (account: InAccount) => string;
  /** Name and mass so far, by account and share of the work done. */
  readonly out: (account: OutAccount, progress: number) => string;
  readonly machines: Readonly<Record<PrepareId | 'drafting', string>>;
  /** The count of fibres, and what it counts. */
  readonly count: string;
  readonly counted: string;
  readonly twist: string;
  /** A number on the ruler, with its unit. */
  readonly rulerMark: (mm: number) => string;
  /** Why the yarn breaks; shown where there is none. */
  readonly broken: string;
  readonly shows: (what: TurningId, perMinute: number, timesSlower: number) => string;
  readonly caption: (legend: {
    readonly tuftKg: number;
    readonly bitKg: number;
    readonly lineFibres: number;
  }) => string;
}
