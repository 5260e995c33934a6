import { handGinDays } from '../../model/gin/hand-gin.ts';
import { type GinBalance, ginBalance, streamKg } from '../gin-balance.ts';
import { lessonSeason } from '../lesson-season.ts';
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
} as const satisfies Readonly<Record<string, Computed>>;
