import { MM_PER_INCH, ouncesPerSquareYardFromGsm } from '../units.ts';
import { jerseyFacts } from './facts.ts';

/** How far a knit has relaxed: off the machine, after a wet finish, after washing. */
export type JerseyState = 'dry' | 'wet' | 'full';

/** What a plain knit is: its loops and its weight. */
export interface JerseyDescription {
  readonly kind: 'knit';
  readonly state: JerseyState;
  readonly loopLengthMm: number;
  readonly coursesPerInch: number;
  readonly walesPerInch: number;
  readonly loopsPerSquareCm: number;
  /** sqrt(tex) / loop length in cm. */
  readonly tightness: number;
  readonly gramsPerSquareMetre: number;
  readonly ouncesPerSquareYard: number;
  /** Knits are outside the chapter on woven cotton. */
  readonly tariffClass: 'knit';
}

const mmPerCm = 10;
const cmPerInch = MM_PER_INCH / mmPerCm;

const constants = (state: JerseyState): { readonly courses: number; readonly wales: number } =>
  state === 'dry'
    ? { courses: jerseyFacts.coursesDry.value, wales: jerseyFacts.walesDry.value }
    : state === 'wet'
      ? { courses: jerseyFacts.coursesWet.value, wales: jerseyFacts.walesWet.value }
      : { courses: jerseyFacts.coursesFull.value, wales: jerseyFacts.walesFull.value };

/** Loop length that a yarn knits at the usual tightness, mm. */
export const usualLoopLengthMm = (tex: number): number => (Math.sqrt(tex) / jerseyFacts.tightness.value) * mmPerCm;

/** Describes plain jersey. Courses and wales follow from the loop: constant / loop length; weight = loops x loop length x tex. */
export function describeJersey(tex: number, loopLengthMm: number, state: JerseyState): JerseyDescription {
  const { courses, wales } = constants(state);
  const loopCm = loopLengthMm / mmPerCm;
  const loopsPerSquareCm = (courses * wales) / loopCm ** 2;
  // Loops per cm2 x mm x tex (g in 1e6 mm) x 10^4 cm2 in a square metre.
  const gramsPerSquareMetre = (loopsPerSquareCm * loopLengthMm * tex) / 100;
  return {
    kind: 'knit',
    state,
    loopLengthMm,
    coursesPerInch: (courses / loopCm) * cmPerInch,
    walesPerInch: (wales / loopCm) * cmPerInch,
    loopsPerSquareCm,
    tightness: Math.sqrt(tex) / loopCm,
    gramsPerSquareMetre,
    ouncesPerSquareYard: ouncesPerSquareYardFromGsm(gramsPerSquareMetre),
    tariffClass: 'knit',
  };
}

/** Shrinkage between two states of relaxation, percent along the wales and across them. */
export function jerseyShrinkPercent(
  from: JerseyState,
  to: JerseyState,
): { readonly length: number; readonly width: number } {
  const before = constants(from);
  const after = constants(to);
  return { length: 100 * (1 - before.courses / after.courses), width: 100 * (1 - before.wales / after.wales) };
}
