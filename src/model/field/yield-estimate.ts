import { KG_PER_POUND, KILO, POUNDS_PER_STATISTICAL_BALE } from '../units.ts';
import { rowFeetPerAcre } from './stand.ts';

const gramsPerPound = KG_PER_POUND * KILO;

/**
 * Bolls on a foot of row that make one 480-lb bale an acre.
 * @param lintFraction lint as a share of the seed cotton
 * Source: Mississippi State, Estimating Yield by Boll Counting, tables 1-2.
 */
export const bollsPerFootForBale = (rowInches: number, bollGrams: number, lintFraction: number): number =>
  (POUNDS_PER_STATISTICAL_BALE * gramsPerPound) / (lintFraction * bollGrams * rowFeetPerAcre(rowInches));

/** Lint that a counted field holds, lb/acre, before any is lost. */
export const lintFromBolls = (plantsPerAcre: number, bollsPerPlant: number, lintGramsPerBoll: number): number =>
  (plantsPerAcre * bollsPerPlant * lintGramsPerBoll) / gramsPerPound;
