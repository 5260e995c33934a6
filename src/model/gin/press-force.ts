import { KG_PER_POUND, MEGA, METRES_PER_FOOT, NEWTONS_PER_KILOGRAM_FORCE, poundsFromKilograms } from '../units.ts';
import { pressFacts as facts } from './press-facts.ts';

/** Meganewtons in one pound-force. */
const mnPerPoundForce = (KG_PER_POUND * NEWTONS_PER_KILOGRAM_FORCE) / MEGA;
const cubicMetresPerCubicFoot = METRES_PER_FOOT * METRES_PER_FOOT * METRES_PER_FOOT;

/** Pounds-force as meganewtons. */
export const meganewtons = (poundsForce: number): number => poundsForce * mnPerPoundForce;

/** Packing of a bale pressed to the Universal Density volume. */
export function universalDensity(netKg: number): { lbPerCubicFoot: number; kgPerCubicMetre: number } {
  const lbPerCubicFoot = poundsFromKilograms(netKg) / facts.universalVolumeCubicFeet.value;
  return { lbPerCubicFoot, kgPerCubicMetre: lbPerCubicFoot * (KG_PER_POUND / cubicMetresPerCubicFoot) };
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
