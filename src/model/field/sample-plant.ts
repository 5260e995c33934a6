import type { Random } from '../random.ts';
import { nodeFacts, retentionFacts, sampleFacts } from './facts.ts';
import type { FieldSeason } from './field-season.ts';
import { type FruitCalendar, vegetativePosition } from './fruit-calendar.ts';

/** One fruiting site. Days are days of the year; null is a day that did not come. */
export interface FruitSite {
  /** 1 next to the stem, then outward. */
  readonly position: 1 | 2 | 3;
  readonly squareDay: number;
  readonly flowerDay: number | null;
  readonly shedDay: number | null;
  readonly openDay: number | null;
  readonly locks: 4 | 5;
  readonly seeds: number;
}
/** One main-stem node and the branch that grows from it. */
interface PlantNode {
  /** 1 above the seed leaves, then upward. */
  readonly number: number;
  readonly appearsDay: number;
  readonly branch: 'none' | 'vegetative' | 'fruiting';
  readonly side: -1 | 1;
  readonly sites: readonly FruitSite[];
}
/** One plant of the field. */
export interface PlantSample {
  readonly nodes: readonly PlantNode[];
}

/** The days, counted from planting, on which a running total passes each whole number after a start in [0, 1). */
function crossings(totals: Float64Array, dayCount: number, start: number): number[] {
  const days: number[] = [];
  for (let day = 0; day < dayCount; day++) while (totals[day]! + start >= days.length + 1) days.push(day);
  return days;
}

/** Draws the fate of one site whose square came, so that many sites give the field's means. */
function drawSite(season: FieldSeason, random: Random, place: number, branchDay: number, step: number): FruitSite {
  const { calendar, plantedDay, variety } = season;
  const squareKept = random.uniform() < variety.positions[place]!.squaresKept;
  const bollChance = random.uniform();
  const { fewestLocks, mostLocks, locksPerBoll } = sampleFacts;
  const locks = random.uniform() < locksPerBoll.value - fewestLocks.value ? mostLocks.value : fewestLocks.value;
  const meanSeeds = (variety.seedsPerBoll * locks) / locksPerBoll.value;
  const seeds = Math.max(1, Math.round(meanSeeds + sampleFacts.seedSpread.value * random.normal()));
  const squareDay = calendar.squareDay[place]![branchDay]!;
  const date = (day: number) => (reached(calendar, day) ? plantedDay + day : null);
  const base = {
    position: (1 + (step % vegetativePosition)) as 1 | 2 | 3,
    squareDay: plantedDay + squareDay,
    locks,
    seeds,
  } as const;
  if (!squareKept) {
    return { ...base, flowerDay: null, shedDay: date(squareDay + retentionFacts.squareShedDays.value), openDay: null };
  }
  const flower = calendar.flowerDay[place]![branchDay]!;
  if (!reached(calendar, flower)) return { ...base, flowerDay: null, shedDay: null, openDay: null };
  const kept = bollChance < calendar.keptShare[place]![flower]!;
  return {
    ...base,
    flowerDay: plantedDay + flower,
    shedDay: kept ? null : date(flower + retentionFacts.bollShedDays.value),
    openDay: kept ? date(calendar.openDay[flower]!) : null,
  };
}

/** How many sites of a place this plant has for one branch: the mean, rounded up or down by chance. */
function drawCount({ calendar }: FieldSeason, random: Random, place: number, branchDay: number): number {
  const count = Math.floor(calendar.sites[place]![branchDay]! + random.uniform());
  return reached(calendar, calendar.squareDay[place]![branchDay]!) ? count : 0;
}

const reached = ({ dayCount }: FruitCalendar, day: number): boolean => day >= 0 && day < dayCount;

/**
 * One plant of the field, drawn from the season's own rates and dates: the mean of many plants is the mean plant.
 * @param random one stream a plant
 */
export function samplePlant(season: FieldSeason, random: Random): PlantSample {
  const { calendar, plantedDay, variety } = season;
  const { dayCount } = calendar;
  const branchStart = random.uniform();
  const nodeDays = crossings(calendar.nodes, dayCount, random.uniform());
  const branchDays = crossings(calendar.branches, dayCount, branchStart);
  const first = Math.floor(variety.firstFruitingNode + random.uniform());
  const firstSide = random.uniform() < 1 / 2 ? -1 : 1;
  const stems = nodeFacts.vegetativeBranches.value;
  const sites = new Map<number, FruitSite[]>();
  const grow = (node: number, place: number, branchDay: number) => {
    const here = sites.get(node) ?? [];
    for (let count = drawCount(season, random, place, branchDay); count > 0; count--) {
      // A vegetative branch fills its own positions in turn.
      here.push(drawSite(season, random, place, branchDay, place < vegetativePosition ? place : here.length));
    }
    if (here.length > 0) sites.set(node, here);
  };
  branchDays.forEach((branchDay, k) => {
    for (let place = 0; place < vegetativePosition; place++) grow(first + k, place, branchDay);
    grow(first - 1 - (k % stems), vegetativePosition, branchDay);
  });
  const count = Math.max(nodeDays.length, branchDays.length > 0 ? first + branchDays.length - 1 : 0);
  return {
    nodes: Array.from({ length: count }, (_, index): PlantNode => {
      const number = index + 1;
      const fruiting = number >= first && number - first < branchDays.length;
      const vegetative = !fruiting && sites.has(number);
      const appears = nodeDays[index] ?? branchDays[number - first]!;
      const square = fruiting ? branchDays[number - first]! : appears;
      return {
        number,
        // A branch cannot square before its node is there.
        appearsDay: plantedDay + Math.min(appears, square),
        branch: fruiting ? 'fruiting' : vegetative ? 'vegetative' : 'none',
        side: (index % 2 === 0 ? firstSide : -firstSide) as -1 | 1,
        sites: sites.get(number) ?? [],
      };
    }),
  };
}
