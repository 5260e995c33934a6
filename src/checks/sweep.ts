import { runSeason } from '../model/chain.ts';
import { farmOf } from '../model/farms.ts';
import { readFibre } from '../model/fibre.ts';
import { climateOf } from '../model/field/climates.ts';
import type { FieldPlan } from '../model/field/field-plan.ts';
import type { FieldCrop, FieldDay, FieldSeason } from '../model/field/field-season.ts';
import { generateWeather } from '../model/field/generate-weather.ts';
import { growSeason } from '../model/field/grow-season.ts';
import type { WeatherYear } from '../model/field/weather.ts';
import { openStream } from '../model/random.ts';
import type { ClimateId, Scenario } from '../model/scenario.ts';
import type { Season } from '../model/season.ts';
import { seedCount } from './seed-count.ts';

const seeds = Array.from({ length: seedCount }, (_, index) => index + 1);

/** Runs a slow thing once, when first asked. */
function remembered<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<string, Value>();
  return (key) => {
    const name = JSON.stringify(key);
    if (!known.has(name)) known.set(name, make(key));
    return known.get(name)!;
  };
}

const farms = {
  coastalPlain: 'coastal-plain',
  midSouth: 'river-bottom',
  highPlains: 'high-plains-dryland',
  lowDesert: 'irrigated-desert',
  centralValley: 'long-staple-valley',
  thirties: 'hand-picked-1930s',
} as const;
/** A farm by its climate, or the hand-picked one. */
export type FarmName = keyof typeof farms;
export const allFarms = Object.keys(farms) as FarmName[];
const farm = (name: FarmName): Scenario => farmOf(farms[name])!;

/** The field of a farm as it is planned. */
export function planOf(name: FarmName): FieldPlan {
  const { climate, era, acres, soilWaterMm, decisions } = farm(name);
  const { method, daysToHarvest, pickings } = decisions.harvest;
  return {
    ...{ climate, era, acres, soilWaterMm, method, daysToHarvest, pickings },
    ...decisions.planting,
    ...decisions.bloom,
    ...decisions.boll,
  };
}

/** The generated weather of a climate, year by year. */
export const yearsOf = remembered(({ climate, count }: { climate: ClimateId; count: number }): readonly WeatherYear[] =>
  Array.from({ length: count }, (_, seed) => generateWeather(climateOf(climate), openStream(seed, 'weather'))),
);

/** One field through many seasons. */
const fieldSeasons = remembered((plan: FieldPlan): readonly FieldSeason[] =>
  seeds.map((seed) => growSeason(plan, generateWeather(climateOf(plan.climate), openStream(seed, 'weather')))),
);

/** One farm through many seasons, from planter to sewing table. */
const wholeSeasons = remembered((name: FarmName): readonly Season[] =>
  seeds.map((seed) => runSeason(farm(name), seed, null)),
);

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** A figure of each season of a field. */
export const fieldFigures = (plan: FieldPlan, figure: (season: FieldSeason) => number): readonly number[] =>
  fieldSeasons(plan).map(figure);
/** Mean of a figure over the seasons of a field. */
export const fieldMean = (plan: FieldPlan, figure: (season: FieldSeason) => number): number =>
  mean(fieldFigures(plan, figure));
/** Mean of a figure over the whole seasons of a farm. */
export const seasonMean = (name: FarmName, figure: (season: Season) => number): number =>
  mean(wholeSeasons(name).map(figure));

/** The crop of a season that made one. */
export function cropOf(season: FieldSeason): FieldCrop {
  if (!season.crop) throw new Error(`no crop: ${season.stopped?.reason}`);
  return season.crop;
}
/** Lint left on the plants at picking, lb/acre; nothing where the crop failed. */
export const standing = ({ crop }: FieldSeason): number =>
  crop ? crop.lintLbPerAcre * (1 - crop.weatheredFraction) : 0;
/** Readings of the fibre in the bolls. */
export const fibreInBolls = (season: FieldSeason) => readFibre(cropOf(season).grown.fibre);

/** Mean of a figure over the seasons of a farm's field, worked out when asked. */
export const farmMean = (name: FarmName, figure: (season: FieldSeason) => number) => () =>
  fieldMean(planOf(name), figure);
/** The same in the Delta, the ordinary field of most sources. */
export const delta = (figure: (season: FieldSeason) => number) => farmMean('midSouth', figure);
/** A day of a season by its day of the year. */
export const dayAt = ({ days }: FieldSeason, dayOfYear: number): FieldDay =>
  days.find((day) => day.dayOfYear === dayOfYear)!;
