import { type Language, localeOf } from './language.ts';

/** Dates of a season. Never all in digits: 3/10 is March to one reader and October to another. */
export interface DateFormats {
  /** 'May 4', '4 de mayo'. */
  day(dayOfYear: number): string;
  /** 'May', 'mayo'. */
  month(dayOfYear: number): string;
  /** 'May', 'may': for the ticks of a ribbon. */
  monthShort(dayOfYear: number): string;
  /** First day of the year (1 to 365) of each month, January first. */
  readonly monthStarts: readonly number[];
}

// A season is 365 days; any common year serves.
const commonYear = 2025;
const monthStarts = [1, 32, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335] as const;
const dateOf = (dayOfYear: number): Date => new Date(Date.UTC(commonYear, 0, Math.round(dayOfYear)));

/** Date formats of a language; days are days of the year, 1 to 365. */
export function makeDateFormats(language: Language): DateFormats {
  const locale = localeOf(language);
  const day = new Intl.DateTimeFormat(locale, { month: 'long', day: 'numeric', timeZone: 'UTC' });
  const month = new Intl.DateTimeFormat(locale, { month: 'long', timeZone: 'UTC' });
  const monthShort = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });
  return {
    day: (dayOfYear) => day.format(dateOf(dayOfYear)),
    month: (dayOfYear) => month.format(dateOf(dayOfYear)),
    monthShort: (dayOfYear) => monthShort.format(dateOf(dayOfYear)),
    monthStarts,
  };
}
