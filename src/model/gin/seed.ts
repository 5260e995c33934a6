import { totalDryKg, totalKg, waterForMoisture } from '../lot.ts';
import { poundsFromKilograms } from '../units.ts';
import { oilMillFacts } from './facts.ts';
import type { Masses } from './machine-step.ts';

/** What an oil mill makes of gin-run seed, kg. */
export interface OilMillSplit {
  readonly oilKg: number;
  readonly mealKg: number;
  readonly hullsKg: number;
  readonly lintersKg: number;
  readonly lossKg: number;
}

/** Crushes seed; what is not oil, meal, hulls or linters is loss. */
export function crushSeed(seedKg: number): OilMillSplit {
  const oilKg = seedKg * oilMillFacts.oil.value;
  const mealKg = seedKg * oilMillFacts.meal.value;
  const hullsKg = seedKg * oilMillFacts.hulls.value;
  const lintersKg = seedKg * oilMillFacts.linters.value;
  return { oilKg, mealKg, hullsKg, lintersKg, lossKg: seedKg - oilKg - mealKg - hullsKg - lintersKg };
}

/**
 * Weight of gin-run seed that is paid for, kg: water above what the seed keeps its oil at is worth nothing.
 * @param seedHouse seed with its lint and trash, as it left the stand
 */
export function paidSeedKg(seedHouse: Masses): number {
  const dryKg = totalDryKg(seedHouse.dryKg);
  return Math.min(totalKg(seedHouse), dryKg + waterForMoisture(dryKg, oilMillFacts.seedPaidToPercent.value / 100));
}

/** Room that gin-run seed takes in a seed house, ft3. */
export const seedRoomCubicFeet = (seedKg: number): number =>
  poundsFromKilograms(seedKg) / oilMillFacts.seedLbPerCubicFoot.value;
