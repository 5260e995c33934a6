import { stationIds } from '../model/station.ts';
import type { Tallies } from './tallies.ts';

/** Only what the kiosk itself counts goes into the table: a name that something else left there could be read as a formula. */
const known = new RegExp(`^(visit|finished|language:[a-z]{2}|station:(${stationIds.join('|')}))$`);

/** One line of the table. */
export interface TallyRow {
  readonly what: string;
  readonly count: number;
  /** Mean time at a station, s; null where no time is counted. */
  readonly meanSeconds: number | null;
  readonly seconds: number;
}

const order = ['visit', 'finished', 'language:', ...stationIds.map((id) => `station:${id}`)];
const place = (what: string): number => order.findIndex((start) => what.startsWith(start));

/** The counts in a fixed order: visits, finished tours, languages, stations as a season passes them. */
export const tallyRows = (tallies: Tallies): readonly TallyRow[] =>
  Object.entries(tallies)
    .filter(([what]) => known.test(what))
    .map(([what, { count, seconds }]) => ({
      what,
      count,
      seconds,
      meanSeconds: what.startsWith('station:') ? seconds / count : null,
    }))
    .sort((a, b) => place(a.what) - place(b.what) || (a.what < b.what ? -1 : 1));

/** The counts as a table that any program reads: what, count, seconds in all. */
export const talliesCsv = (tallies: Tallies): string =>
  [
    'what,count,seconds',
    ...tallyRows(tallies).map(({ what, count, seconds }) => `${what},${count},${seconds}`),
    '',
  ].join('\r\n');
