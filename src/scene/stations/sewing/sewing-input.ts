import type { InkName } from '../../../style/inks.ts';
import type { Masses, OutAccount } from '../flow/flow-input.ts';

/** What the sewing table shows. Lengths in inches, masses in kg for one bale's worth. */
export interface SewingScene {
  readonly size: { readonly width: number; readonly height: number };
  /** A cutting mat today; in the 1930s a table and chalk. */
  readonly mat: boolean;
  /** Side of the square that one boll's lint makes; null where no boll was counted. */
  readonly patchInches: number | null;
  readonly seamInches: number;
  readonly locks: 4 | 5;
  readonly cloth: { readonly ink: InkName; readonly printed: boolean };
  readonly inflow: Masses;
  readonly outflow: readonly { readonly account: OutAccount; readonly masses: Masses }[];
  readonly unitKg: number;
  /** Distance between the lines of the mat, inches, and how many of them from one number to the next. */
  readonly grid: { readonly inches: number; readonly numberEach: number };
  readonly labels: SewingLabels;
}

/** Words on the picture, already translated, numbers included. */
export interface SewingLabels {
  /** The statement in three: before the measure, the measure, after it. */
  readonly before: string;
  readonly measure: string;
  readonly after: string;
  /** The side of the patch, exact, and what the seams leave of it. */
  readonly side: string;
  readonly sewn: string;
  readonly grain: string;
  /** Null for a knit, which is slit and has none. */
  readonly selvage: string | null;
  readonly needle: string;
  readonly thread: string;
  readonly inflow: string;
  /** Name and mass so far, by account and share of the work done. */
  readonly out: (account: OutAccount, progress: number) => string;
  readonly caption: (snipKg: number) => string;
}
