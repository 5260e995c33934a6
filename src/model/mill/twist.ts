import { KILO, MM_PER_INCH } from '../units.ts';
import { type SpinningSystem, twistFacts, twistTable, type YarnUse } from './facts.ts';

const inchesPerMetre = KILO / MM_PER_INCH;

const straight = (x: number, x0: number, y0: number, x1: number, y1: number): number =>
  y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);

/**
 * Twist multiplier for a use and a staple: between the staple classes of the table it runs straight, so that a longer
 * staple never asks for more twist. Rotor yarn takes more.
 */
export function twistMultiplier(use: YarnUse, upperHalfMeanInches: number, system: SpinningSystem): number {
  const row = twistTable.rows.find((candidate) => candidate.use === use)!;
  const { shortStapleInches, mediumStapleInches, longStapleInches, rotorFactor } = twistFacts;
  const short = shortStapleInches.value;
  const medium = mediumStapleInches.value;
  const long = longStapleInches.value;
  const staple = Math.min(long, Math.max(short, upperHalfMeanInches));
  const ring =
    staple < medium
      ? straight(staple, short, row.short, medium, row.medium)
      : straight(staple, medium, row.medium, long, row.long);
  return system === 'rotor' ? ring * rotorFactor.value : ring;
}

/** Turns per inch = multiplier x sqrt(Ne). */
export const turnsPerInch = (multiplier: number, ne: number): number => multiplier * Math.sqrt(ne);

/** Turns per metre. */
export const turnsPerMetre = (multiplier: number, ne: number): number => turnsPerInch(multiplier, ne) * inchesPerMetre;
