import { MM_PER_INCH, ouncesPerSquareYardFromGsm } from '../units.ts';
import type { JerseyDescription } from './describe-jersey.ts';
import { interlockFacts } from './interlock-facts.ts';

const mmPerCm = 10;
const cmPerInch = MM_PER_INCH / mmPerCm;

/**
 * Describes interlock in its reference state: courses and wales follow from the loop, as in plain knit, and every loop of
 * the face has one behind it.
 * @param loopLengthMm yarn in one loop, mm
 */
export function describeInterlock(tex: number, loopLengthMm: number): JerseyDescription {
  const loopCm = loopLengthMm / mmPerCm;
  const { courses, wales, faces } = interlockFacts;
  const loopsPerSquareCm = (courses.value * wales.value) / loopCm ** 2;
  const gramsPerSquareMetre = (faces.value * loopsPerSquareCm * loopLengthMm * tex) / 100;
  return {
    kind: 'knit',
    state: 'full',
    loopLengthMm,
    coursesPerInch: (courses.value / loopCm) * cmPerInch,
    walesPerInch: (wales.value / loopCm) * cmPerInch,
    loopsPerSquareCm,
    tightness: Math.sqrt(tex) / loopCm,
    gramsPerSquareMetre,
    ouncesPerSquareYard: ouncesPerSquareYardFromGsm(gramsPerSquareMetre),
    tariffClass: 'knit',
  };
}
