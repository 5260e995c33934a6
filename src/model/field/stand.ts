import { INCHES_PER_FOOT, SQUARE_FEET_PER_ACRE } from '../units.ts';
import { stageFacts } from './facts.ts';

/** Feet of row in an acre (Mississippi State, Estimating Yield by Boll Counting). */
export const rowFeetPerAcre = (rowInches: number): number => (SQUARE_FEET_PER_ACRE * INCHES_PER_FOOT) / rowInches;

/** Plants that stand of the seeds sown, an acre. */
export const plantsStanding = (seedsPerAcre: number, emergenceFraction: number): number =>
  seedsPerAcre * emergenceFraction;

/**
 * Share of the seeds that come up: the usual stand, less for each day that cold held the seed in the ground.
 * @param days from planting to emergence
 */
export function emergenceFraction(days: number): number {
  const { emergenceFraction: usual, promptEmergenceDays, standLossPerLateDay, leastEmergenceFraction } = stageFacts;
  const late = Math.max(0, days - promptEmergenceDays.value);
  return Math.max(leastEmergenceFraction.value, usual.value - late * standLossPerLateDay.value);
}
