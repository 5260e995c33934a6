import { groupDryKg, type Lot, moistureFraction } from '../lot.ts';
import { office } from './facts.ts';

/** Moisture of the lint, percent of its dry mass: the office's way of stating it. */
export function moisturePercentDryBasis(lot: Pick<Lot, 'dryKg' | 'waterKg'>): number {
  const dry = groupDryKg(lot.dryKg, 'lint');
  return dry > 0 ? (100 * lot.waterKg.lint) / dry : 0;
}

/** Moisture of the lint, percent of lint and water together: the gin's way of stating it. */
export const moisturePercentWetBasis = (lot: Pick<Lot, 'dryKg' | 'waterKg'>): number =>
  100 * moistureFraction(lot, 'lint');

/** Whether a sample may be tested as it is; outside the gate it lies in the laboratory's air first. */
export const readyToTest = (moisturePercent: number): boolean =>
  moisturePercent >= office.moistureLowPercent.value && moisturePercent <= office.moistureHighPercent.value;
