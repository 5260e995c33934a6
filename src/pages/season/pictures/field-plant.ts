import type { FieldDay, FieldSeason } from '../../../model/field/field-season.ts';
import { type FruitSite, type PlantSample, samplePlant } from '../../../model/field/sample-plant.ts';
import { leafRemaining } from '../../../model/field/weathering.ts';
import { openStream } from '../../../model/random.ts';
import type { Season } from '../../../model/season.ts';
import { type SiteState, siteOn } from '../../../scene/stations/plant/plant-sample.ts';

/** Plants drawn by lot until one is in flower on the last day of Bloom. */
const mostDraws = 12;

const sampled = new WeakMap<FieldSeason, readonly PlantSample[]>();

/** How many sites of a plant stand in a state on a day. */
export const countSites = (plant: PlantSample, dayOfYear: number, kind: SiteState['kind']): number =>
  plant.nodes
    .filter(({ appearsDay }) => appearsDay <= dayOfYear)
    .flatMap(({ sites }) => sites)
    .filter((site) => siteOn(site, dayOfYear).kind === kind).length;

/** Plants of the field drawn by lot, one after another: a stretch of its row. */
export function plantsOf({ field, seed }: Season): readonly PlantSample[] {
  const known = sampled.get(field);
  if (known) return known;
  const stream = openStream(seed, 'plant');
  const plants = Array.from({ length: mostDraws }, () => samplePlant(field, stream));
  sampled.set(field, plants);
  return plants;
}

/**
 * The one plant of a season that is drawn large: the first by lot that has a flower on the last day of Bloom, so that the
 * station never ends on a bare frame. Which plant it is moves no number: the panels show the field's means.
 */
export function plantOf(season: Season): PlantSample {
  const plants = plantsOf(season);
  const { cutOut } = season.field.events;
  const inFlower = cutOut === null ? undefined : plants.find((plant) => countSites(plant, cutOut, 'flower') > 0);
  return inFlower ?? plants[0]!;
}

/** The field's mean on a day of the year; the nearest day that the season has. */
export function fieldDayOn(field: FieldSeason, dayOfYear: number): FieldDay {
  const index = Math.min(field.days.length - 1, Math.max(0, dayOfYear - field.plantedDay));
  return field.days[index]!;
}

/** Leaves still on the plant on a day, 0 to 1: all until a harvest aid or a killing frost, then as the model lets them fall. */
export function leafShareOn({ events }: FieldSeason, dayOfYear: number): number {
  const since = (day: number | null) => (day === null || dayOfYear < day ? null : dayOfYear - day);
  return leafRemaining(since(events.harvestAid), since(events.killingFrost));
}

/** A site with its place on the plant. */
export interface FoundSite {
  readonly node: number;
  readonly index: number;
  readonly site: FruitSite;
}

/** Every site of the nodes that are there on a day. */
const sitesOn = (plant: PlantSample, dayOfYear: number): FoundSite[] =>
  plant.nodes
    .filter(({ appearsDay }) => appearsDay <= dayOfYear)
    .flatMap(({ number, sites }) => sites.map((site, index) => ({ node: number, index, site })));

/** The first of the best by an order; undefined when there is none. */
const best = <T>(all: readonly T[], rank: (one: T) => number): T | undefined =>
  all.reduce<T | undefined>((sofar, one) => (sofar === undefined || rank(one) < rank(sofar) ? one : sofar), undefined);

/** The flower to show large on a day: the youngest, highest up; or the square that opens next; or the oldest square. */
export function flowerShown(plant: PlantSample, dayOfYear: number): FoundSite | null {
  const sites = sitesOn(plant, dayOfYear).map((found) => ({ ...found, state: siteOn(found.site, dayOfYear) }));
  const flowers = sites.filter(({ state }) => state.kind === 'flower');
  const squares = sites.filter(({ state }) => state.kind === 'square');
  const opening = squares.filter(({ site }) => site.flowerDay !== null);
  return (
    best(flowers, ({ site, node }) => dayOfYear - site.flowerDay! - node / 1000) ??
    best(opening, ({ site, node }) => site.flowerDay! - node / 1000) ??
    best(squares, ({ site }) => site.squareDay) ??
    null
  );
}

/**
 * The boll to follow through the station: of those that open before the field is picked, the one that flowered last before
 * cut-out, so that all its growing is seen; else the last that is kept at all.
 */
export function bollShown(season: Season): FoundSite | null {
  const { field } = season;
  const { cutOut } = field.events;
  const lastDay = field.days.at(-1)!.dayOfYear;
  const kept = sitesOn(plantOf(season), lastDay).filter(({ site }) => site.openDay !== null);
  const before = kept.filter(
    ({ site }) => site.flowerDay! <= (cutOut ?? lastDay) && site.openDay! <= (field.harvestDays[0] ?? lastDay),
  );
  return best(before.length > 0 ? before : kept, ({ site, node }) => -site.flowerDay! - node / 1000) ?? null;
}
