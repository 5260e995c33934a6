import { RADIANS_PER_DEGREE } from '../units.ts';
import { overhangFacts } from './overhang-facts.ts';

/** A place on a strip that hangs over the edge of a table, mm from the edge: out from it and down. */
export interface HangingPlace {
  readonly outMm: number;
  readonly downMm: number;
}

const cubed = (value: number): number => value * value * value;

/** Follows the strip from the table with a first bend, turns per mm; the bend that is left at its free end comes out too. */
function follow(bend: number, lengthMm: number, bendingLengthMm: number) {
  const steps = overhangFacts.steps.value;
  const step = lengthMm / steps;
  const stiff = cubed(bendingLengthMm);
  const places: HangingPlace[] = [{ outMm: 0, downMm: 0 }];
  let [angle, curvature, outMm, downMm] = [0, bend, 0, 0];
  for (let i = 0; i < steps; i++) {
    // The middle of each step stands for it. The bend falls by the weight still beyond: c^3 d2a/ds2 = -(L - s) cos a.
    const halfAngle = angle + (curvature * step) / 2;
    const fall = ((lengthMm - (i + 1 / 2) * step) * Math.cos(halfAngle)) / stiff;
    const halfCurvature = curvature - (fall * step) / 2;
    const middle = angle + (halfCurvature * step) / 2;
    angle += halfCurvature * step;
    curvature -= fall * step;
    outMm += Math.cos(middle) * step;
    downMm += Math.sin(middle) * step;
    places.push({ outMm, downMm });
  }
  return { places, endCurvature: curvature };
}

/**
 * The curve of a strip that hangs over an edge by its own weight: an elastic strip, level at the edge, free at its end.
 * @param overhangMm length of strip beyond the edge, mm; at most four times the bending length, beyond which the search fails
 * @param bendingLengthMm c, with c^3 = bending rigidity over weight, both for a strip of equal width
 */
export function hangingStrip(overhangMm: number, bendingLengthMm: number): readonly HangingPlace[] {
  let low = 0;
  let high = (overhangFacts.sharpest.value * Math.PI) / 2 / bendingLengthMm;
  for (let i = 0; i < overhangFacts.halvings.value; i++) {
    const middle = (low + high) / 2;
    if (follow(middle, overhangMm, bendingLengthMm).endCurvature > 0) high = middle;
    else low = middle;
  }
  return follow((low + high) / 2, overhangMm, bendingLengthMm).places;
}

/** Bending length of a strip whose free end is seen at an angle below level from the edge, mm; Peirce's approximation. */
export function bendingLengthAtMm(overhangMm: number, angleDegrees: number): number {
  const angle = angleDegrees * RADIANS_PER_DEGREE;
  return overhangMm * Math.cbrt(Math.cos(angle / 2) / (overhangFacts.peirceEight.value * Math.tan(angle)));
}
