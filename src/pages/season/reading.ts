import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { Trust } from '../../ui/trust-mark.tsx';
import type { Printed } from '../../workings/working.ts';
import { printed } from './printed.ts';

/** One figure that a station reports, in words and units. */
export interface Reading {
  /** The figure's name among those of its station: what its working is found by. */
  readonly key: string;
  readonly label: string;
  readonly text: string;
  /** What it rests on, where that is memory, common practice or assumption. */
  readonly trust?: Trust;
}

/** The figures of a station; empty where the season did not come that far. */
export type StationReadings = (season: Season, words: Words) => Reading[];

/** Makes a reading in the reader's words. */
export type ReadingMaker = (
  key: string,
  label: string,
  value: Exclude<Printed, { as: 'exact' }> | null,
  trust?: Trust,
) => Reading[];

/** Writes a station's figures; one without a value is left out. */
export const readingsIn =
  (words: Words): ReadingMaker =>
  (key, label, value, trust) => {
    if (value === null) return [];
    const text = printed(value, words);
    return [trust ? { key, label, text, trust } : { key, label, text }];
  };
