import * as v from 'valibot';
import { latitudeLimits, recordLimits } from '../../model/field/record-facts.ts';
import type { OpenedWeather } from '../season/season-session.ts';

const daysKept = 365;
const { temperature, rain } = recordLimits.us;
const yearOf = (low: number, high: number) =>
  v.pipe(v.array(v.pipe(v.number(), v.minValue(low), v.maxValue(high))), v.length(daysKept));

const keptWeather = v.object({
  name: v.string(),
  notes: v.array(v.string()),
  latitudeDegrees: v.pipe(v.number(), v.minValue(latitudeLimits.low.value), v.maxValue(latitudeLimits.high.value)),
  year: v.nullable(v.pipe(v.number(), v.integer())),
  maxF: yearOf(temperature.low.value, temperature.high.value),
  minF: yearOf(temperature.low.value, temperature.high.value),
  rainInches: yearOf(rain.low.value, rain.high.value),
});

/** A weather record as it is kept on the device: three rows of numbers, in °F and inches. */
export const keepWeather = ({ name, notes, year }: OpenedWeather): v.InferOutput<typeof keptWeather> => ({
  name,
  notes: [...notes],
  latitudeDegrees: year.latitudeDegrees,
  year: year.year,
  maxF: year.days.map((day) => day.maxF),
  minF: year.days.map((day) => day.minF),
  rainInches: year.days.map((day) => day.rainInches),
});

/** The record again, or null where what was kept is no whole year of weather. */
export function readKeptWeather(kept: unknown): OpenedWeather | null {
  const read = v.safeParse(keptWeather, kept);
  if (!read.success) return null;
  const { name, notes, latitudeDegrees, year, maxF, minF, rainInches } = read.output;
  const days = maxF.map((max, index) => ({
    dayOfYear: index + 1,
    maxF: max,
    minF: minF[index]!,
    rainInches: rainInches[index]!,
  }));
  return { name, notes, year: { latitudeDegrees, year, origin: 'record', days } };
}
