import type { Checked } from '../problem.ts';
import { DAYS_PER_YEAR } from '../units.ts';
import type { RecordRow } from './record-rows.ts';

/** One year of a record, 365 places; null where a day, or one of its values, is missing. */
export interface RecordYear {
  readonly year: number;
  readonly days: readonly (RecordRow | null)[];
}

const whole = (row: RecordRow) => row.max !== null && row.min !== null && row.rain !== null;

const missingOf = ({ days }: RecordYear): number => days.filter((day) => !day).length;

/**
 * Chooses the year: the one asked for, else the first with at most `mostMissing` days missing, else the fullest.
 * @param notes told what was chosen and left out
 */
export function chooseYear(
  rows: readonly RecordRow[],
  asked: number | null,
  mostMissing: number,
  notes: string[],
): Checked<RecordYear> {
  const years = new Map<number, (RecordRow | null)[]>();
  let leapDays = 0;
  for (const row of rows) {
    if (row.dayOfYear === 0) {
      leapDays++;
      continue;
    }
    const days = years.get(row.year) ?? new Array<RecordRow | null>(DAYS_PER_YEAR).fill(null);
    days[row.dayOfYear - 1] = whole(row) ? row : null;
    years.set(row.year, days);
  }
  const found = [...years].map(([year, days]): RecordYear => ({ year, days })).sort((a, b) => a.year - b.year);
  const names = found.map(({ year }) => String(year));
  const wanted = asked === null ? null : found.find(({ year }) => year === asked);
  if (asked !== null && !wanted) {
    return { ok: false, problems: [{ field: 'year', value: String(asked), rule: { kind: 'choice', options: names } }] };
  }
  const full = found.find((year) => missingOf(year) <= mostMissing);
  const fullest = found.reduce((best, year) => (missingOf(year) < missingOf(best) ? year : best), found[0]!);
  const chosen = wanted ?? full ?? fullest;
  if (found.length > 1) notes.push(`years in the record: ${names.join(', ')}; used: ${chosen.year}`);
  if (leapDays > 0) notes.push('29 February left out');
  return { ok: true, value: chosen };
}
