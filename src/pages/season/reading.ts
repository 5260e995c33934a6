import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { Trust } from '../../ui/trust-mark.tsx';

/** One figure that a station reports, in words and units. */
export interface Reading {
  readonly label: string;
  readonly text: string;
  /** What it rests on, where that is memory, common practice or assumption. */
  readonly trust?: Trust;
}

/** The figures of a station; empty where the season did not come that far. */
export type StationReadings = (season: Season, words: Words) => Reading[];

/** A figure, left out where there is nothing to show. */
export const reading = (label: string, text: string | null, trust?: Trust): Reading[] =>
  text === null ? [] : [trust ? { label, text, trust } : { label, text }];
