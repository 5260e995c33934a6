import { runSeason } from '../../model/chain.ts';
import { farmOf } from '../../model/farms.ts';
import { positionTable } from '../../model/field/variety-facts.ts';
import { handGinDays } from '../../model/gin/hand-gin.ts';
import { handGinFacts } from '../../model/gin/speed-facts.ts';
import { labourFacts } from '../../model/harvest/labour-facts.ts';
import { KG_PER_POUND, poundsFromKilograms } from '../../model/units.ts';
import { type GinBalance, ginBalance, streamKg } from '../gin-balance.ts';
import { lessonSeason, lessonSeed } from '../lesson-season.ts';
import { farmSummer } from '../plant-summer.ts';
import type { Computed } from './computed.ts';

const summer = () => farmSummer('coastal-plain');
const daysBetween = (from: keyof ReturnType<typeof summer>['events'], to: typeof from): number =>
  summer().events[to] - summer().events[from];

/** How many squares a branch of upland makes, and so how many are let go. */
const { sites } = positionTable.upland[1];

let balance: GinBalance | null = null;
function gin(): GinBalance {
  balance ??= ginBalance(lessonSeason());
  return balance;
}
const baleKg = () => streamKg(gin().steps.at(-1)!.left);

const { menPoundsPerDay, womenPoundsPerDay, childTaskLb, fewestBollsPerPound, mostBollsPerPound } = labourFacts;
/** Seed cotton of one bale as hands bring it, lb. */
function handPickedPoundsPerBale(): number {
  const { into } = ginBalance(runSeason(farmOf('hand-picked-1930s')!, lessonSeed, null));
  return streamKg(into) / KG_PER_POUND;
}

/** Printed totals of a census differ by a few thousand. */
const toTenThousand = (people: number): number => Math.round(people / 10_000) * 10_000;

export const fieldToBaleQuantities = {
  'days-planting-to-picking': { as: 'days', value: () => daysBetween('planted', 'picked') },
  'days-planting-to-square': { as: 'days', value: () => daysBetween('planted', 'firstSquare') },
  'days-planting-to-flower': { as: 'days', value: () => daysBetween('planted', 'firstFlower') },
  'days-flower-to-open': { as: 'days', value: () => daysBetween('firstFlower', 'firstOpenBoll') },
  'squares-per-plant': { as: 'plain', value: () => summer().squares, restsOn: sites },
  'open-bolls-of-hundred-squares': { as: 'plain', value: () => summer().openOfHundred, restsOn: sites },
  'bale-of-hundred': { as: 'percentage', value: () => (100 * baleKg()) / streamKg(gin().into), decimals: 0 },
  'seed-per-bale': { as: 'mass', value: () => gin().seedKg, decimals: 0 },
  'trash-per-bale': { as: 'mass', value: () => gin().into.trash, decimals: 0 },
  'seed-cotton-per-bale': { as: 'mass', value: () => streamKg(gin().into), decimals: 0 },
  'bale-weight': { as: 'mass', value: baleKg, decimals: 0 },
  'hand-gin-days-per-bale': { as: 'days', value: () => handGinDays(baleKg()) },
  'fewest-hand-gin-days-per-bale': {
    as: 'days',
    value: () => poundsFromKilograms(baleKg()) / handGinFacts.mostLintLbPerDay.value,
  },
  'fewest-bolls-per-picking-day': { as: 'plain', value: () => menPoundsPerDay.value * fewestBollsPerPound.value },
  'most-bolls-per-picking-day': { as: 'plain', value: () => menPoundsPerDay.value * mostBollsPerPound.value },
  'fewest-bolls-per-child-task': { as: 'plain', value: () => childTaskLb.value * fewestBollsPerPound.value },
  'most-bolls-per-child-task': { as: 'plain', value: () => childTaskLb.value * mostBollsPerPound.value },
  'picking-days-per-bale-men': { as: 'days', value: () => handPickedPoundsPerBale() / menPoundsPerDay.value },
  'picking-days-per-bale-women': { as: 'days', value: () => handPickedPoundsPerBale() / womenPoundsPerDay.value },
  'hand-picked-load-per-bale': {
    as: 'pounds',
    value: () => Math.round(handPickedPoundsPerBale() / 10) * 10,
  },
  'enslaved-1790': { as: 'plain', value: () => toTenThousand(labourFacts.enslaved1790.value) },
  'enslaved-1860': { as: 'plain', value: () => toTenThousand(labourFacts.enslaved1860.value) },
  'machine-dollars-per-bale': { as: 'plain', value: () => labourFacts.machineDollarsPerBale.value, decimals: 0 },
} as const satisfies Readonly<Record<string, Computed>>;
