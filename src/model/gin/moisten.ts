import { groupDryKg, type Lot, moistureFraction, waterForMoisture } from '../lot.ts';
import { type MachineStep, type Masses, waterOnly } from './machine-step.ts';

/** Water that brings a mass from one moisture to a higher one, same unit as the mass; both moistures % wet basis. Never negative. */
export const waterToAdd = (mass: number, fromPercent: number, toPercent: number): number =>
  Math.max(0, (mass * (toPercent - fromPercent)) / (100 - toPercent));

/**
 * Brings the lint up to a moisture with damp air or a spray. It only adds: lint that is damper already passes unchanged.
 * @param machine name of the step
 */
export function moistenLint(machine: string, lot: Lot, toPercent: number): MachineStep {
  const wantedKg = waterForMoisture(groupDryKg(lot.dryKg, 'lint'), toPercent / 100);
  const addedKg = Math.max(0, wantedKg - lot.waterKg.lint);
  const out: Masses = { dryKg: lot.dryKg, waterKg: { ...lot.waterKg, lint: lot.waterKg.lint + addedKg } };
  return {
    machine,
    in: { dryKg: lot.dryKg, waterKg: lot.waterKg },
    added: [{ account: 'moistureAdded', masses: waterOnly({ lint: addedKg, seed: 0, trash: 0 }) }],
    removed: [],
    out,
    fibreBefore: lot.fibre,
    fibreAfter: lot.fibre,
  };
}

/** Lint moisture, % wet basis. */
export const lintMoisturePercent = (masses: Masses): number => 100 * moistureFraction(masses, 'lint');
