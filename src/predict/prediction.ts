import type { Season } from '../model/season.ts';

/** What is guessed, and so how a page writes it. */
export type PredictedQuantity =
  | 'seedsOfHundred'
  | 'sharePercent'
  | 'days'
  | 'fahrenheit'
  | 'bales'
  | 'staple32nds'
  | 'fibres'
  | 'inches';

/** A question that is asked before a station's numbers are shown: what can be answered, and what the season gives. */
export interface Prediction {
  readonly quantity: PredictedQuantity;
  /** The least and the most that can be guessed, in the quantity's unit. */
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** The few guesses of a question answered by buttons, rising; else the guess is dragged on a ruler. */
  readonly choices?: readonly number[];
  /** The range is too wide for a ruler: the guess is typed. */
  readonly typed?: true;
  /** The figure of the station that is the answer, where one is. */
  readonly reading?: string;
  /** What the season gives, in the quantity's unit; null where it did not come so far. */
  readonly answer: (season: Season) => number | null;
}

/** Where the notch of a ruler stands before anyone moved it: the middle, on a mark. */
export const middleGuess = ({ low, high, step }: Prediction): number =>
  low + Math.round((high - low) / 2 / step) * step;
