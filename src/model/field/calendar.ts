import { leapFacts, monthLengths } from './calendar-facts.ts';

/** Days of each month, January first, 29 February left out. */
export const monthDays: readonly number[] = monthLengths.rows;
/** Days before each month. */
export const daysBefore: readonly number[] = monthDays.map((_, month) =>
  monthDays.slice(0, month).reduce((sum, days) => sum + days, 0),
);

const leapDay = { month: 2, day: monthDays[1]! + 1 } as const;

const isLeap = (year: number): boolean =>
  year % leapFacts.everyYears.value === 0 && (year % 100 !== 0 || year % leapFacts.everyCenturyYears.value === 0);

/** An ISO date taken apart. 29 February has day of year 0: the model's years leave it out. */
export interface CalendarDay {
  readonly year: number;
  readonly dayOfYear: number;
}

/** Reads YYYY-MM-DD (a time after it is ignored); null when there is no such day. */
export function readIsoDate(text: string): CalendarDay | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})(?:[T ].*)?$/.exec(text.trim());
  if (!match) return null;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month === leapDay.month && day === leapDay.day) return isLeap(year) ? { year, dayOfYear: 0 } : null;
  const length = monthDays[month - 1];
  if (length === undefined || day < 1 || day > length) return null;
  return { year, dayOfYear: daysBefore[month - 1]! + day };
}

/** The ISO date of a day of the year, 29 February left out. */
export function dateOfDay(year: number, dayOfYear: number): string {
  const after = daysBefore.findIndex((before) => before >= dayOfYear);
  const month = (after < 0 ? daysBefore.length : after) - 1;
  const two = (n: number) => String(n).padStart(2, '0');
  return `${year}-${two(month + 1)}-${two(dayOfYear - daysBefore[month]!)}`;
}
