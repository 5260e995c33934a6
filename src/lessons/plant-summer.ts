import { runSeason } from '../model/chain.ts';
import { farmOf } from '../model/farms.ts';
import type { FieldSeason } from '../model/field/field-season.ts';
import { lessonSeed } from './lesson-season.ts';

export const summerFarmIds = [
  'coastal-plain',
  'high-plains-dryland',
  'irrigated-desert',
  'long-staple-valley',
] as const;
export type SummerFarmId = (typeof summerFarmIds)[number];

export const summerEvents = ['planted', 'emerged', 'firstSquare', 'firstFlower', 'firstOpenBoll', 'picked'] as const;
type SummerEvent = (typeof summerEvents)[number];

/** What hangs on the mean plant of a field on one evening. */
interface SummerDay {
  readonly dayOfYear: number;
  readonly squares: number;
  readonly greenBolls: number;
  readonly openBolls: number;
}

/** A summer of one mean plant, from seed to picking. */
export interface PlantSummer {
  readonly kind: 'upland' | 'pima';
  /** Days of the year. */
  readonly events: Readonly<Record<SummerEvent, number>>;
  readonly days: readonly SummerDay[];
  readonly most: Readonly<
    Record<'squares' | 'greenBolls' | 'openBolls', { readonly dayOfYear: number; readonly count: number }>
  >;
  /** Squares of the whole summer, and how many of a hundred ended as an open boll. */
  readonly squares: number;
  readonly openOfHundred: number;
}

/**
 * The summer of a field.
 * @throws Error when the crop failed
 */
export function plantSummer(field: FieldSeason): PlantSummer {
  const { emerged, firstSquare, firstFlower, firstOpenBoll } = field.events;
  const picked = field.harvestDays.at(-1);
  const last = field.days.at(-1);
  if (emerged === null || firstSquare === null || firstFlower === null || firstOpenBoll === null || !picked || !last)
    throw new Error('plant summer: this crop failed');
  const days = field.days.map(({ dayOfYear, perPlant }) => ({
    dayOfYear,
    squares: perPlant.squares,
    greenBolls: perPlant.greenBolls + perPlant.flowersToday,
    openBolls: perPlant.openBolls,
  }));
  const mostOf = (key: 'squares' | 'greenBolls' | 'openBolls') => {
    const day = days.reduce((best, one) => (one[key] > best[key] ? one : best));
    return { dayOfYear: day.dayOfYear, count: day[key] };
  };
  const end = last.perPlant;
  const squares = end.squares + end.flowersToday + end.greenBolls + end.openBolls + end.shed;
  return {
    kind: field.variety.kind,
    events: { planted: field.plantedDay, emerged, firstSquare, firstFlower, firstOpenBoll, picked },
    days,
    most: { squares: mostOf('squares'), greenBolls: mostOf('greenBolls'), openBolls: mostOf('openBolls') },
    squares,
    openOfHundred: (100 * end.openBolls) / squares,
  };
}

const known = new Map<SummerFarmId, PlantSummer>();

/** The summer on one of the invented farms, in the season that lessons speak of; grown once. */
export function farmSummer(id: SummerFarmId): PlantSummer {
  const found = known.get(id) ?? plantSummer(runSeason(farmOf(id)!, lessonSeed, null).field);
  known.set(id, found);
  return found;
}
