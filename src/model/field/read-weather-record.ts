import type { Checked, Problem } from '../problem.ts';
import { fahrenheitFromCelsius, inchesFromMillimetres } from '../units.ts';
import { dateOfDay } from './calendar.ts';
import { mostProblems, parseRecord, type RecordRow } from './record-rows.ts';
import { chooseYear } from './record-year.ts';
import type { DayWeather, WeatherYear } from './weather.ts';

/** How a record is to be read; null leaves it to the record. */
export interface RecordOptions {
  readonly units: 'us' | 'metric' | null;
  readonly latitudeDegrees: number | null;
  readonly year: number | null;
}

/** Most missing days that are filled in. */
const mostFilledDays = 5;
/** No inhabited place has been hotter, °C: a higher figure can only be Fahrenheit. */
const hottestC = 60;
/** Middle of the cotton belt, degrees north. */
const usualLatitude = 33;

/** Largest daily rain and the widest temperatures that are believed, in each unit. */
const limits = {
  us: { low: -76, high: 140, rain: 80, temperature: '°F', depth: 'inches' },
  metric: { low: -60, high: hottestC, rain: 2000, temperature: '°C', depth: 'mm' },
} as const;

/** Values that cannot be weather. */
function impossible(rows: readonly RecordRow[], units: 'us' | 'metric'): Problem[] {
  const { low, high, rain, temperature, depth } = limits[units];
  const problems: Problem[] = [];
  for (const { line, max, min, rain: fell } of rows) {
    const check = (column: string, value: number | null, from: number, to: number, unit: string) => {
      if (value === null || (value >= from && value <= to)) return;
      const rule = { kind: 'range', low: from, high: to, step: null, unit } as const;
      problems.push({ field: `${column}, line ${line}`, value: String(value), rule });
    };
    check('TMAX', max, low, high, temperature);
    check('TMIN', min, low, high, temperature);
    check('PRCP', fell, 0, rain, depth);
    if (max !== null && min !== null && min > max) {
      const rule = { kind: 'type', expected: `at most TMAX (${max})` } as const;
      problems.push({ field: `TMIN, line ${line}`, value: String(min), rule });
    }
  }
  return problems;
}

/** Guesses the units from the warmest day. */
function guessUnits(rows: readonly RecordRow[]): 'us' | 'metric' {
  return rows.some(({ max }) => max !== null && max > hottestC) ? 'us' : 'metric';
}

/** Latitude from the option, then the record, then the middle of the cotton belt; a note says which. */
function latitudeOf(rows: readonly RecordRow[], asked: number | null, notes: string[]): number {
  const written = rows.find(({ latitude }) => latitude !== null)?.latitude ?? null;
  const latitude = asked ?? written ?? usualLatitude;
  const from =
    asked !== null
      ? 'as asked'
      : written !== null
        ? 'from the LATITUDE column'
        : 'none given, so the middle of the cotton belt';
  notes.push(`latitude ${latitude} (${from})`);
  return latitude;
}

/** A day to the model's units; a missing day lies between its neighbours and is taken as dry. */
function fillDay(days: readonly (RecordRow | null)[], index: number): { max: number; min: number; rain: number } {
  const here = days[index]!;
  if (here) return { max: here.max!, min: here.min!, rain: here.rain! };
  let before = index;
  while (before >= 0 && !days[before]) before--;
  let after = index;
  while (after < days.length && !days[after]) after++;
  const from = days[before] ?? days[after]!;
  const to = days[after] ?? from;
  const share = before < 0 ? 0 : (index - before) / (after - before);
  return {
    max: from!.max! + (to!.max! - from!.max!) * share,
    min: from!.min! + (to!.min! - from!.min!) * share,
    rain: 0,
  };
}

/** Problems about a year that lacks too many days. */
function tooManyGaps(year: number, missing: readonly number[]): Problem {
  const dates = missing.slice(0, mostFilledDays + 1).map((day) => dateOfDay(year, day));
  const more = missing.length > dates.length ? ` and ${missing.length - dates.length} more` : '';
  return {
    field: 'DATE',
    value: `missing ${dates.join(', ')}${more}`,
    rule: { kind: 'type', expected: `every day of ${year}, at most ${mostFilledDays} missing` },
  };
}

/**
 * Reads a daily record in the layout of public daily summaries: a header with DATE, TMAX, TMIN and PRCP in any order and
 * case, ISO dates; other columns are left aside, but a LATITUDE column is used. Everything assumed is said in the notes.
 * @param csv the text of the file
 * @returns one whole year, 29 February left out, or the problems found
 */
export function readWeatherRecord(csv: string, options: RecordOptions): Checked<WeatherYear> {
  const parsed = parseRecord(csv);
  if (!parsed.ok) return parsed;
  const rows = parsed.value;
  const notes: string[] = [];
  const units = options.units ?? guessUnits(rows);
  if (!options.units) {
    notes.push(
      units === 'us' ? 'units taken as °F and inches (a high above 60)' : 'units taken as °C and mm (no high above 60)',
    );
  }
  const problems = impossible(rows, units);
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, mostProblems) };
  const chosen = chooseYear(rows, options.year, mostFilledDays, notes);
  if (!chosen.ok) return chosen;
  const { year, days } = chosen.value;
  const missing = days.flatMap((row, index) => (row ? [] : [index + 1]));
  if (missing.length > mostFilledDays) return { ok: false, problems: [tooManyGaps(year, missing)] };
  if (missing.length > 0) {
    const dates = missing.map((day) => dateOfDay(year, day)).join(', ');
    notes.push(`filled from the days beside: ${dates} (taken as dry)`);
  }
  const fahrenheit = units === 'us' ? (t: number) => t : fahrenheitFromCelsius;
  const inches = units === 'us' ? (r: number) => r : inchesFromMillimetres;
  const weather = days.map((_, index): DayWeather => {
    const { max, min, rain } = fillDay(days, index);
    return { dayOfYear: index + 1, maxF: fahrenheit(max), minF: fahrenheit(min), rainInches: inches(rain) };
  });
  const latitudeDegrees = latitudeOf(rows, options.latitudeDegrees, notes);
  return { ok: true, value: { latitudeDegrees, year, origin: 'record', days: weather }, notes };
}
