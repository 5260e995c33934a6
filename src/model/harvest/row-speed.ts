import { INCHES_PER_FOOT, MINUTES_PER_HOUR, SQUARE_FEET_PER_ACRE } from '../units.ts';

/**
 * Mean speed along the row of a machine that gathers so many acres an hour, turns at the ends included.
 * @param acresPerHour what it gathers; @param rows how many rows at once; @param rowInches from row to row
 * @returns feet of row a second
 */
export function rowFeetPerSecond(acresPerHour: number, rows: number, rowInches: number): number {
  const feetPerHour = (acresPerHour * SQUARE_FEET_PER_ACRE) / ((rows * rowInches) / INCHES_PER_FOOT);
  return feetPerHour / (MINUTES_PER_HOUR * MINUTES_PER_HOUR);
}
