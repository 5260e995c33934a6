import { runSeason } from '../../model/chain.ts';
import { farmOf } from '../../model/farms.ts';
import { handGinDays } from '../../model/gin/hand-gin.ts';
import { harvestFacts } from '../../model/harvest/facts.ts';
import { labourFacts } from '../../model/harvest/labour-facts.ts';
import { KG_PER_POUND, KILO } from '../../model/units.ts';
import { type GinBalance, ginBalance, streamKg } from '../gin-balance.ts';
import { lessonSeason, lessonSeed } from '../lesson-season.ts';
import { farmSummer } from '../plant-summer.ts';
import type { Computed } from './computed.ts';

const summer = () => farmSummer('coastal-plain');
const daysBetween = (from: keyof ReturnType<typeof summer>['events'], to: typeof from): number =>
  summer().events[to] - summer().events[from];

let balance: GinBalance | null = null;
function gin(): GinBalance {
  balance ??= ginBalance(lessonSeason());
  return balance;
}
const baleKg = () => streamKg(gin().steps.at(-1)!.left);

const gramsPerPound = KG_PER_POUND * KILO;
/** Open bolls of the example season in some seed cotton. */
export const bollsInPounds = (pounds: number): number => (pounds * gramsPerPound) / lessonSeason().field.bollGrams;
const dayPounds = harvestFacts.handPoundsPerDay.value;
/** Seed cotton of one bale as hands bring it, lb. */
function handPickedPoundsPerBale(): number {
  const { into } = ginBalance(runSeason(farmOf('hand-picked-1930s')!, lessonSeed, null));
  return streamKg(into) / KG_PER_POUND;
}

export const fieldToBaleQuantities = {
  'days-planting-to-picking': { as: 'days', value: () => daysBetween('planted', 'picked') },
  'days-planting-to-square': { as: 'days', value: () => daysBetween('planted', 'firstSquare') },
  'days-planting-to-flower': { as: 'days', value: () => daysBetween('planted', 'firstFlower') },
  'days-flower-to-open': { as: 'days', value: () => daysBetween('firstFlower', 'firstOpenBoll') },
  'squares-per-plant': { as: 'plain', value: () => summer().squares },
  'open-bolls-of-hundred-squares': { as: 'plain', value: () => summer().openOfHundred },
  'bale-of-hundred': { as: 'percentage', value: () => (100 * baleKg()) / streamKg(gin().into), decimals: 0 },
  'seed-per-bale': { as: 'mass', value: () => gin().steps[1]!.taken.seed, decimals: 0 },
  'trash-per-bale': { as: 'mass', value: () => gin().into.trash, decimals: 0 },
  'seed-cotton-per-bale': { as: 'mass', value: () => streamKg(gin().into), decimals: 0 },
  'bale-weight': { as: 'mass', value: baleKg, decimals: 0 },
  'hand-gin-days-per-bale': { as: 'days', value: () => handGinDays(gin().steps.at(-1)!.left.lint) },
  'bolls-per-picking-day': { as: 'plain', value: () => Math.round(bollsInPounds(dayPounds) / 100) * 100 },
  'bolls-per-child-task': {
    as: 'plain',
    value: () => Math.round(bollsInPounds(labourFacts.childTaskLb.value) / 10) * 10,
  },
  'picking-days-per-bale': { as: 'days', value: () => handPickedPoundsPerBale() / dayPounds },
  'hand-picked-load-per-bale': { as: 'pounds', value: handPickedPoundsPerBale },
} as const satisfies Readonly<Record<string, Computed>>;
