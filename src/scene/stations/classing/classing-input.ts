import type { Masses } from '../flow/flow-input.ts';

/** A tick of a scale, in the scale's own measure; one without words is a short one. */
export interface ScaleTick {
  readonly at: number;
  readonly text?: string;
}

/** A scale's words: what is read, and the reading as the record writes it. */
interface Read {
  readonly name: string;
  readonly value: string;
  /** The reading where there is less room. */
  readonly short?: string;
}

/** The fibres of the sample laid side by side, longest first, on a ruler. */
export interface LengthScale extends Read {
  readonly fibresIn: readonly number[];
  readonly atIn: number;
  readonly longestIn: number;
  readonly ticks: readonly ScaleTick[];
  /** Whether a hand holds the pull. */
  readonly byHand: boolean;
}

/** A straight line of the colour chart: yellowness at a brightness. */
export interface GroupEdge {
  readonly b: number;
  /** Yellowness gained for each Rd above `fromRd`. */
  readonly perRd: number;
  readonly fromRd: number;
}

/** The colour chart that the model grades by: yellowness to the right, brightness up. */
export interface ColourScale extends Read {
  readonly kind: 'chart';
  readonly groups: readonly GroupEdge[];
  /** Lowest Rd of each grade, and how yellowness counts toward it: Rd + weight x (+b above `fromB`). */
  readonly steps: {
    readonly rd: readonly number[];
    readonly weight: number;
    readonly fromB: number;
    /** Codes of the first group's grades, best first. */
    readonly codes: readonly string[];
  };
  readonly at: { readonly rd: number; readonly b: number };
  readonly others: readonly { readonly rd: number; readonly b: number }[];
}

/** The row of boxes that a classer held a sample against: the white grades, best first. */
export interface StandardBoxes extends Read {
  readonly kind: 'boxes';
  readonly boxes: number;
  /** Which box the sample is like, counted from 1; one more than there are stands for below grade. */
  readonly at: number;
  readonly best: string;
  readonly worst: string;
}

export interface MicronaireScale extends Read {
  readonly from: number;
  readonly to: number;
  /** Where each market class begins, and whether it pays more, the same or less than base. */
  readonly classes: readonly { readonly from: number; readonly pays: 1 | 0 | -1 }[];
  readonly ticks: readonly ScaleTick[];
  readonly at: number;
  readonly others: readonly number[];
}

export interface LeafScale extends Read {
  /** Grades with a number, the last below grade. */
  readonly grades: number;
  readonly at: number;
  /** Bales of the season by grade, from grade 1. */
  readonly bales: readonly number[];
}

/** One line of the price: what it is for, and cents a pound as they are written and as they are. */
export interface PriceLine {
  readonly label: string;
  readonly text: string;
  readonly cents: number;
}

export interface PriceSlip {
  readonly title: string;
  /** The base first, then every difference. */
  readonly lines: readonly PriceLine[];
  readonly total: string;
  readonly value: string;
  /** Why there are no differences; empty where there are. */
  readonly note: string;
}

export interface ClassingScene {
  readonly size: { readonly width: number; readonly height: number };
  readonly unitKg: number;
  readonly wrap: 'jute' | 'bag';
  readonly inflow: Masses;
  readonly onward: Masses;
  readonly length: LengthScale;
  readonly colour: ColourScale | StandardBoxes;
  readonly micronaire: MicronaireScale | null;
  readonly leaf: LeafScale | null;
  readonly price: PriceSlip;
  readonly labels: ClassingLabels;
}

/** Words on the picture, already translated, numbers included. */
export interface ClassingLabels {
  readonly inflow: string;
  /** The tag's number in its parts, or the gin's mark. */
  readonly coupon: readonly string[];
  readonly couponNote: string;
  readonly sample: (progress: number) => string;
  readonly onward: (progress: number) => string;
  readonly caption: (tuftKg: number) => string;
}
