import type { FlowLegend } from '../flow/flow-input.ts';
import type { InEntry, OutEntry } from '../flow/labelled-entry.ts';

/** A bale of the field, as the scale read it. */
export interface WeighedBale {
  /** Net weight, in the reader's unit. */
  readonly weight: number;
  readonly remnant: boolean;
}

/** One bale's worth of lint at the press, and all the bales of the field. Words are already translated. */
export interface PressingInput {
  readonly era: 'present' | 'thirties';
  readonly lint: InEntry;
  /** Water put back at the lint slide; null where none is. */
  readonly water: InEntry | null;
  readonly pressed: OutEntry;
  readonly bales: readonly WeighedBale[];
  /** The weight aimed at, in the reader's unit. */
  readonly wanted: number;
  /** Length and thickness of a tied bale, in any one unit, and how many ties hold it. */
  readonly baleShape: { readonly long: number; readonly thick: number; readonly ties: number };
  /** One pound or one kilogram, kg. */
  readonly unitKg: number;
  readonly size: { readonly width: number; readonly height: number };
  /** Strokes of the tramper, drawn as fast as they are. */
  readonly trampsPerMinute: number;
  readonly labels: {
    readonly tramper: string;
    readonly ram: string;
    /** Names of accounts in a few letters, for a small picture. */
    readonly short: { readonly in: string; readonly water: string };
    /** The card: one bale's worth, which counts with the work, then the mean bale in lines of a name and a value. */
    readonly worth: string;
    readonly pressed: string;
    readonly mean: string;
    readonly card: readonly { readonly name: string; readonly value: string }[];
    /** The tag or the stencilled mark of a bale, by its place from 0. */
    readonly markOf: (place: number) => string;
    /** So many bales, as a number and its noun. */
    readonly count: (bales: number) => string;
    readonly countOf: string;
    /** What is said of a light last bale; empty where there is none. */
    readonly remnant: string;
    readonly weights: string;
    readonly wanted: string;
    readonly tick: (weight: number) => string;
    readonly shows: string;
    readonly caption: (legend: FlowLegend) => string;
    readonly captionShort: (legend: FlowLegend) => string;
  };
}
