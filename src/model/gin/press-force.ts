import { poundsFromKilograms } from '../units.ts';
import { pressFacts as facts } from './facts.ts';

/** Meganewtons in one pound-force: 0.453 592 37 kg x 9.806 65 m/s2, exact. */
const mnPerPoundForce = (0.45359237 * 9.80665) / 1e6;

/** Pounds-force as meganewtons. */
export const meganewtons = (poundsForce: number): number => poundsForce * mnPerPoundForce;

/** Packing of a bale pressed to the Universal Density volume. */
export function universalDensity(netKg: number): { lbPerCubicFoot: number; kgPerCubicMetre: number } {
  const lbPerCubicFoot = poundsFromKilograms(netKg) / facts.universalVolumeCubicFeet.value;
  return { lbPerCubicFoot, kgPerCubicMetre: lbPerCubicFoot * (0.45359237 / 0.3048 ** 3) };
}

/**
 * Force of the press, lbf: log force is linear in log density and falls with moisture; through the one measured point.
 * @param densityLbPerCubicFoot in the press box at full stroke
 * @param raisedInserts bars on the platen that press the bale along lines first
 */
export function pressForceLb(densityLbPerCubicFoot: number, moisturePercent: number, raisedInserts = false): number {
  const at = raisedInserts ? facts.insertForceLb.value : facts.pressForceLb.value;
  return (
    at *
    (densityLbPerCubicFoot / facts.pressDensity.value) ** facts.pressExponent.value *
    Math.exp(-facts.pressSoftening.value * (moisturePercent - facts.pressMoisturePercent.value))
  );
}

/** Density at full stroke of a bale of a net weight, lb/ft3: the stroke is the same, so a heavier bale is denser. */
export const fullStrokeDensity = (netKg: number): number =>
  (facts.pressDensity.value * poundsFromKilograms(netKg)) / facts.pressNetLb.value;
