import type { DecisionsOf } from '../../../model/decisions.ts';
import type { DisplayList, Mark } from '../../display-list.ts';
import type { MovingPart, MovingPiece } from '../../scene-frame.ts';
import type { FlowLegend } from '../flow/flow-input.ts';
import type { InEntry, OutEntry } from '../flow/labelled-entry.ts';
import type { FlowScale } from '../flow/strip-band.ts';

/** What a bale's worth of cotton takes to gather: one of these, never both. */
export type Labour =
  | { readonly kind: 'personDays'; readonly days: number }
  | { readonly kind: 'machineMinutes'; readonly minutes: number };

/** Every piece goes the whole of its path in this time, seconds: a bale's worth passes in it. */
export const HARVEST_LAP_SECONDS = 13;

/** How a part turns on the page, and what that shows. */
export interface Turning {
  readonly turnsPerSecond: number;
  readonly shows: string;
}

/** Words on the picture, already translated, numbers included. */
export interface HarvestLabels {
  /** Work done so far, as a number with its unit in short; and what it counts. */
  readonly labour: (share: number) => string;
  readonly labourOf: string;
  readonly drum: string;
  /** Its name alone, for a small picture. */
  readonly drumShort: string;
  readonly doffer: string;
  readonly wetPad: string;
  readonly sack: string;
  readonly rolls: string;
  readonly fieldCleaner: string;
  /** What becomes of the stalks afterwards. */
  readonly stalks: string;
  /** Marks on the ruler along the sack, each at its share of the sack's length; the last names the whole. */
  readonly sackTicks: readonly { readonly share: number; readonly text: string }[];
  /** In full, and as short as a phone wants it. */
  readonly caption: (legend: FlowLegend, short: boolean) => string;
}

export interface HarvestInput {
  readonly method: DecisionsOf<'harvest'>['method'];
  readonly inflow: readonly InEntry[];
  readonly outflow: readonly OutEntry[];
  readonly labour: Labour;
  /** One pound or one kilogram, kg: pieces stand for round numbers of it. */
  readonly unitKg: number;
  readonly size: { readonly width: number; readonly height: number };
  readonly labels: HarvestLabels;
  readonly turning: {
    /** What the drum shows when a turn takes so many seconds on the page: its rim goes as fast as the row. */
    readonly drum: (secondsATurn: number) => string;
    readonly doffer: (secondsATurn: number) => string;
    readonly rolls: Turning;
    readonly cleaner: Turning;
  };
}

/** What every view of the harvest is laid out with. */
export interface HarvestRoom {
  readonly input: HarvestInput;
  readonly scale: FlowScale;
  readonly wide: boolean;
  /** Size of ordinary words, px. */
  readonly textPx: number;
  /** Where the hem with the caption begins, px from the top. */
  readonly floor: number;
  /** The picture's height less what a second line of the caption takes, px: what it is laid out by. */
  readonly tallPx: number;
}

/** One way of gathering, seen close. */
export interface HarvestView {
  readonly still: DisplayList;
  readonly parts: readonly MovingPart[];
  readonly pieces: readonly MovingPiece[];
  /** What lies above the pieces when a share of the work is done. */
  readonly over: (share: number) => Mark[];
}
