import type { DecisionsOf } from '../../../model/decisions.ts';
import type { ModuleVerdict } from '../../../model/module/heating.ts';
import type { FlowLegend } from '../flow/flow-input.ts';
import type { InEntry, OutEntry } from '../flow/labelled-entry.ts';
import type { FlowScale } from '../flow/strip-band.ts';

/** Every piece goes the whole of its path in this time, seconds: a bale's worth passes in it. */
export const MODULE_LAP_SECONDS = 16;

/** A place on a scale, and its words. */
export interface ScaleTick {
  readonly value: number;
  /** Already translated; a tick without words is a short one. */
  readonly text?: string;
}

/** Words on the picture, already translated, numbers included. */
export interface ModuleLabels {
  readonly day: (day: number) => string;
  readonly rain: (inches: number) => string;
  /** One inch of rain, or some round number of millimetres, on the scale of the rain. */
  readonly rainTick: string;
  readonly count: string;
  readonly core: (f: number) => string;
  readonly verdicts: Readonly<Record<ModuleVerdict, string>>;
  /** Moisture as it came and as it goes. */
  readonly moistureBoth: string;
  readonly height: string;
  readonly length: string;
  /** On a phone the shortest, on a low picture one line, else all of it. */
  readonly caption: (legend: FlowLegend, room: 'phone' | 'low' | 'full') => string;
}

export interface ModuleInput {
  readonly kind: DecisionsOf<'module'>['kind'];
  readonly cover: DecisionsOf<'module'>['cover'];
  readonly inflow: readonly InEntry[];
  readonly outflow: readonly OutEntry[];
  readonly count: number;
  /** Length along the ground over height, of one module. */
  readonly longOverHigh: number;
  /** Rain of each day in storage, inches. */
  readonly rainInches: readonly number[];
  /** One tick of the scale of rain, inches. */
  readonly rainTickInches: number;
  /** The core on each day, F; day 0 first. */
  readonly coreF: readonly number[];
  readonly startF: number;
  readonly ginSoonF: number;
  readonly ginNowF: number;
  /** One ring round the core stands for so much warming, F. */
  readonly ringF: number;
  readonly temperatureTicks: readonly ScaleTick[];
  readonly moisture: {
    readonly inPercent: number;
    readonly outPercent: number;
    /** Published: store below this. */
    readonly safePercent: number;
    readonly ticks: readonly ScaleTick[];
  };
  readonly verdictOn: (day: number) => ModuleVerdict;
  readonly unitKg: number;
  readonly size: { readonly width: number; readonly height: number };
  readonly labels: ModuleLabels;
}

/** What the parts of the picture are laid out with. */
export interface ModuleRoom {
  readonly input: ModuleInput;
  readonly scale: FlowScale;
  readonly wide: boolean;
  readonly textPx: number;
  /** Where the hem with the caption begins, px from the top. */
  readonly floor: number;
}
