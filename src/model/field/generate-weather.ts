import type { Random } from '../random.ts';
import { DAYS_PER_YEAR } from '../units.ts';
import { daysBefore, monthDays } from './calendar.ts';
import type { Monthly } from './climate-facts.ts';
import type { Climate } from './climates.ts';
import { generatorFacts, residualMatrices } from './water-facts.ts';
import type { DayWeather, WeatherYear } from './weather.ts';

/** Middle of each month, days from the start of the year. */
const monthMiddles = monthDays.map((length, month) => daysBefore[month]! + length / 2);

/** Where a day lies between two mid-months. */
function between(dayOfYear: number): { readonly before: number; readonly after: number; readonly share: number } {
  const at = dayOfYear - 1 / 2;
  const next = monthMiddles.findIndex((middle) => middle > at);
  const after = Math.max(0, next);
  const before = (after - 1 + monthDays.length) % monthDays.length;
  const from = monthMiddles[before]! - (after === 0 && at < monthMiddles[0]! ? DAYS_PER_YEAR : 0);
  const to = monthMiddles[after]! + (next < 0 ? DAYS_PER_YEAR : 0);
  return { before, after, share: (at - from) / (to - from) };
}

/** Rain of a wet day, inches: a skewed normal (SWAT+ theory 1:3.1.2). */
function rainOf(mean: number, sd: number, skew: number, normal: number): number {
  const { skewDivisor, skewPower, leastRainInches } = generatorFacts;
  const part = skew / skewDivisor.value;
  const rain = mean + (2 * sd * (((normal - part) * part + 1) ** skewPower.value - 1)) / skew;
  return Math.max(leastRainInches.value, rain);
}

/**
 * A year of invented weather for a climate, in the Richardson way: a chain of wet and dry days, skewed rain, and
 * temperatures that remember yesterday. Monthly figures are interpolated between mid-months.
 * @param random one stream; the year uses it up to the end of December
 */
export function generateWeather(climate: Climate, random: Random): WeatherYear {
  const [[carryMaxMax, carryMaxMin], [carryMinMax, carryMinMin]] = residualMatrices.carry;
  const [[noiseMaxMax], [noiseMinMax, noiseMinMin]] = residualMatrices.noise;
  const days: DayWeather[] = [];
  let wet = random.uniform() < wetShare(climate.wetAfterWet[0]!, climate.wetAfterDry[0]!);
  let residualMax = 0;
  let residualMin = 0;
  for (let dayOfYear = 1; dayOfYear <= DAYS_PER_YEAR; dayOfYear++) {
    const { before, after, share } = between(dayOfYear);
    const today = (months: Monthly) => months[before]! * (1 - share) + months[after]! * share;
    const wetAfterWet = today(climate.wetAfterWet);
    const wetAfterDry = today(climate.wetAfterDry);
    wet = random.uniform() < (wet ? wetAfterWet : wetAfterDry);
    const rainInches = wet
      ? rainOf(today(climate.meanRainInches), today(climate.sdRainInches), today(climate.skewRain), random.normal())
      : 0;
    const noiseA = random.normal();
    const noiseB = random.normal();
    const nextMax = carryMaxMax * residualMax + carryMaxMin * residualMin + noiseMaxMax * noiseA;
    residualMin = carryMinMax * residualMax + carryMinMin * residualMin + noiseMinMax * noiseA + noiseMinMin * noiseB;
    residualMax = nextMax;
    const highs = today(climate.maxF);
    const lows = today(climate.minF) + climate.levers.farmNightF.value;
    const apart = generatorFacts.wetDayShift.value * (highs - lows);
    const dryHigh = highs + wetShare(wetAfterWet, wetAfterDry) * apart;
    const maxF =
      (wet ? dryHigh - apart : dryHigh) + generatorFacts.spreadKept.value * today(climate.sdMaxF) * residualMax;
    const minF = lows + today(climate.sdMinF) * residualMin;
    days.push({ dayOfYear, maxF, minF: Math.min(minF, maxF - generatorFacts.leastRangeF.value), rainInches });
  }
  return { latitudeDegrees: climate.latitudeDegrees, year: null, origin: 'generated', days };
}

/** Long-run share of wet days of a two-state chain. */
const wetShare = (wetAfterWet: number, wetAfterDry: number): number => wetAfterDry / (1 + wetAfterDry - wetAfterWet);
