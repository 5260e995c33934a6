/** Days before each month in a year of 365 days. */
const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;
const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

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
  if (month === 2 && day === 29) return isLeap(year) ? { year, dayOfYear: 0 } : null;
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
