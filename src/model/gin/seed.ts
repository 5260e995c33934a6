import { poundsFromKilograms } from '../units.ts';
import { oilMillFacts } from './facts.ts';

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

/** Room that gin-run seed takes in a seed house, ft3. */
export const seedRoomCubicFeet = (seedKg: number): number =>
  poundsFromKilograms(seedKg) / oilMillFacts.seedLbPerCubicFoot.value;
