import type { Fact, FactTable } from '../fact.ts';
import { derived } from './mark.ts';

const gregorian = 'the Gregorian calendar, by definition';

/** Days of each month of a common year, January first. */
export const monthLengths = {
  rows: [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31],
  unit: 'day',
  source: gregorian,
  mark: 'derived',
} as const satisfies FactTable<number>;

/** Which years have a 29 February. */
export const leapFacts = {
  everyYears: derived(4, 'year', null, gregorian),
  everyCenturyYears: derived(400, 'year', null, gregorian, 'of the full centuries only every fourth is a leap year'),
} as const satisfies Record<string, Fact>;
