import { climateOf } from '../../../src/model/field/climates.ts';
import type { FieldPlan } from '../../../src/model/field/field-plan.ts';
import type { FieldSeason } from '../../../src/model/field/field-season.ts';
import { generateWeather } from '../../../src/model/field/generate-weather.ts';
import { growSeason } from '../../../src/model/field/grow-season.ts';
import type { WeatherYear } from '../../../src/model/field/weather.ts';
import { openStream } from '../../../src/model/random.ts';
import type { ClimateId } from '../../../src/model/scenario.ts';

const picked = {
  era: 'present',
  acres: 40,
  rowInches: 38,
  seedsPerFoot: 3.5,
  harvestAid: true,
  openPercent: 60,
  daysToHarvest: 14,
  pickings: 1,
} as const;

/** An ordinary farm of each climate. */
export const ordinary = {
  midSouth: {
    ...picked,
    climate: 'midSouth',
    soilWaterMm: 150,
    variety: 'uplandMedium',
    plantingDayOfYear: 121,
    irrigationInches: 4,
    method: 'spindle',
  },
  coastalPlain: {
    ...picked,
    climate: 'coastalPlain',
    soilWaterMm: 110,
    variety: 'uplandMedium',
    plantingDayOfYear: 125,
    irrigationInches: 0,
    method: 'spindle',
  },
  highPlains: {
    ...picked,
    climate: 'highPlains',
    soilWaterMm: 130,
    variety: 'uplandMedium',
    plantingDayOfYear: 135,
    rowInches: 40,
    seedsPerFoot: 2.5,
    irrigationInches: 0,
    method: 'stripperFieldCleaner',
  },
  lowDesert: {
    ...picked,
    climate: 'lowDesert',
    soilWaterMm: 140,
    variety: 'uplandLong',
    plantingDayOfYear: 100,
    irrigationInches: 40,
    method: 'spindle',
  },
  centralValley: {
    ...picked,
    climate: 'centralValley',
    soilWaterMm: 150,
    variety: 'pima',
    plantingDayOfYear: 118,
    irrigationInches: 34,
    method: 'spindle',
  },
} as const satisfies Record<ClimateId, FieldPlan>;

/** A hand-picked field of the 1930s. */
export const handPicked: FieldPlan = {
  ...ordinary.coastalPlain,
  era: 'thirties',
  acres: 12,
  variety: 'uplandShort',
  plantingDayOfYear: 110,
  rowInches: 40,
  seedsPerFoot: 2,
  harvestAid: false,
  openPercent: 50,
  method: 'hand',
  daysToHarvest: 0,
  pickings: 3,
};

/** The weather of a seed. */
export const weatherOf = (climate: ClimateId, seed: number): WeatherYear =>
  generateWeather(climateOf(climate), openStream(seed, 'weather'));

/** The season of a plan in the weather of a seed. */
export const seasonOf = (plan: FieldPlan, seed: number): FieldSeason => growSeason(plan, weatherOf(plan.climate, seed));

/** Mean of a figure over the seeds 1 to count. */
export function meanOver(plan: FieldPlan, count: number, figure: (season: FieldSeason) => number): number {
  let sum = 0;
  for (let seed = 1; seed <= count; seed++) sum += figure(seasonOf(plan, seed));
  return sum / count;
}

/** A year in which every day is alike. */
export const evenYear = (maxF: number, minF: number, rainInches: number): WeatherYear => ({
  latitudeDegrees: 33,
  year: null,
  origin: 'generated',
  days: Array.from({ length: 365 }, (_, index) => ({ dayOfYear: index + 1, maxF, minF, rainInches })),
});

/** Changes the weather from a day of the year on. */
export const changedFrom = (
  weather: WeatherYear,
  fromDay: number,
  change: Partial<WeatherYear['days'][number]>,
): WeatherYear => ({
  ...weather,
  days: weather.days.map((day) => (day.dayOfYear >= fromDay ? { ...day, ...change } : day)),
});
