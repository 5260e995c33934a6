import type { ClothFinish } from '../../../model/cloth/facts.ts';
import type { WeaveId } from '../../../model/cloth/weaves.ts';
import type { InAccount, Masses, OutAccount } from '../flow/flow-input.ts';

/** Threads to the inch, or loops: ends or wales across the cloth, picks or courses along it. */
export interface Sett {
  readonly across: number;
  readonly along: number;
}

/** The cloth as it is drawn: loop or crossing by crossing. */
export interface ShownCloth {
  readonly structure: WeaveId | 'jersey';
  readonly finish: ClothFinish;
  readonly onLoom: Sett;
  readonly finished: Sett;
  readonly yarnMm: number;
  /** Taken out by finishing, percent. */
  readonly shrink: { readonly length: number; readonly width: number };
}

/** What moves: picks of a loom, or turns of a knitting machine. */
export type WeavingMotion = 'shafts' | 'reed' | 'knitting';

export interface WeavingScene {
  readonly size: { readonly width: number; readonly height: number };
  readonly unitKg: number;
  readonly knit: boolean;
  /** Shafts that the weave needs. */
  readonly shafts: number;
  /** Picks a minute, or turns of a knitting machine. */
  readonly perMinute: number;
  /** Null where the threads cannot lie so close. */
  readonly cloth: ShownCloth | null;
  readonly inflow: readonly { readonly account: InAccount; readonly masses: Masses }[];
  readonly outflow: readonly { readonly account: OutAccount; readonly masses: Masses }[];
  /** Length between the ruler's ticks. */
  readonly rulerTickMm: number;
  readonly labels: WeavingLabels;
}

/** What the caption tells: masses of pieces, how many times slower the machine and how many times larger the cloth is drawn. */
export interface CaptionTold {
  readonly pieceKg: number;
  readonly bitKg: number;
  readonly times: number;
  readonly magnified: number;
}

/** Words on the picture, already translated, numbers included. */
export interface WeavingLabels {
  readonly in: (account: InAccount) => string;
  readonly out: (account: OutAccount, progress: number) => string;
  readonly names: {
    readonly warpBeam: string;
    readonly shafts: string;
    readonly reed: string;
    readonly clothBeam: string;
    readonly needles: string;
    readonly cones: string;
  };
  /** What is done to the cloth off the loom; empty where nothing is. */
  readonly bath: string;
  readonly onLoom: string;
  readonly finished: string;
  readonly shrunk: string;
  /** Why no cloth can be woven; empty where it can. */
  readonly stopped: string;
  readonly rulerMark: (mm: number) => string;
  readonly shows: (what: WeavingMotion, perMinute: number, times: number) => string;
  readonly caption: (told: CaptionTold) => string;
}
