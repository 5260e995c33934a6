import type { Fact } from '../fact.ts';
import type { Checked, Problem } from '../problem.ts';
import { fahrenheitFromCelsius, inchesFromMillimetres } from '../units.ts';
import { dateOfDay } from './calendar.ts';
import { latitudeLimits, recordFacts, recordLimits } from './record-facts.ts';
import { parseRecord, type RecordRow } from './record-rows.ts';
import { chooseYear } from './record-year.ts';
import type { DayWeather, WeatherYear } from './weather.ts';

/** How a record is to be read; null leaves it to the record. */
export interface RecordOptions {
  readonly units: 'us' | 'metric' | null;
  /** The latitude somebody asked for, degrees north; null when nobody did. */
  readonly latitudeDegrees: number | null;
  /** Taken where none is asked for and the record has none: that of the farm's climate. */
  readonly fallbackLatitudeDegrees: number;
  readonly year: number | null;
}

const mostFilledDays = recordFacts.mostFilledDays.value;

/** Values that cannot be weather. */
function impossible(rows: readonly RecordRow[], units: 'us' | 'metric'): Problem[] {
  const { temperature, rain } = recordLimits[units];
  const problems: Problem[] = [];
  for (const { line, max, min, rain: fell, latitude } of rows) {
    const check = (
      column: string,
      value: number | null,
      { low, high }: { readonly low: Fact; readonly high: Fact },
    ) => {
      if (value === null || (value >= low.value && value <= high.value)) return;
      const rule = { kind: 'range', low: low.value, high: high.value, step: null, unit: high.unit } as const;
      problems.push({ field: `${column}, line ${line}`, value: String(value), rule });
    };
    check('TMAX', max, temperature);
    check('TMIN', min, temperature);
    check('PRCP', fell, rain);
    check('LATITUDE', latitude, latitudeLimits);
    if (max !== null && min !== null && min > max) {
      const rule = { kind: 'type', expected: `at most TMAX (${max})` } as const;
      problems.push({ field: `TMIN, line ${line}`, value: String(min), rule });
    }
  }
  return problems;
}

/** Guesses the units from the middle one of the highs: a few wild values do not move it. */
function guessUnits(rows: readonly RecordRow[], notes: string[]): 'us' | 'metric' {
  const highs = rows.flatMap(({ max }) => (max === null ? [] : [max])).sort((a, b) => a - b);
  const limit = recordFacts.medianHighOfFahrenheit.value;
  const fahrenheit = (highs[Math.floor(highs.length / 2)] ?? 0) > limit;
  notes.push(
    fahrenheit
      ? `units taken as °F and inches (half the highs are above ${limit})`
      : `units taken as °C and mm (half the highs are below ${limit})`,
  );
  return fahrenheit ? 'us' : 'metric';
}

/** Latitude as asked, else the record's own, else the fallback; a note says which. */
function latitudeOf(rows: readonly RecordRow[], asked: number | null, fallback: number, notes: string[]): number {
  const written = rows.find(({ latitude }) => latitude !== null)?.latitude ?? null;
  const latitude = asked ?? written ?? fallback;
  const from =
    asked !== null ? 'as asked' : written !== null ? 'from the LATITUDE column' : 'none given, so that of the farm';
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
  const units = options.units ?? guessUnits(rows, notes);
  const problems = impossible(rows, units);
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, recordFacts.mostProblems.value) };
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
  const latitudeDegrees = latitudeOf(rows, options.latitudeDegrees, options.fallbackLatitudeDegrees, notes);
  return { ok: true, value: { latitudeDegrees, year, origin: 'record', days: weather }, notes };
}
