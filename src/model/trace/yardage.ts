import { roundingFacts } from '../rounding-facts.ts';
import { INCHES_PER_YARD } from '../units.ts';
import { projectFacts } from './facts.ts';

const squareInchesPerSquareYard = INCHES_PER_YARD ** 2;
const hair = roundingFacts.hair.value;

/** Square yards in a rectangle given in inches. */
export const squareYards = (widthInches: number, lengthInches: number): number =>
  (widthInches * lengthInches) / squareInchesPerSquareYard;

/** Rounds a length up to what a shop cuts, yards. */
export function roundUpYards(yards: number): number {
  const quarter = projectFacts.roundYards.value;
  // The guard keeps a length that is whole quarters on paper from gaining one to rounding.
  return Math.ceil(yards / quarter - hair) * quarter;
}

/** Yards of one width that cover the same area in another. Layout can change this by about a tenth. */
export const yardsAtWidth = (yards: number, fromInches: number, toInches: number): number =>
  (yards * fromInches) / toInches;

/**
 * Cloth to buy for a quilt's backing, yards: strips of the usable width, side by side, the way that takes less.
 * @param widthInches of the backing with its margin
 */
export function backingYards(widthInches: number, lengthInches: number): number {
  const usable = projectFacts.usableWidthInches.value;
  const strips = (across: number, along: number) => (Math.ceil(across / usable - hair) * along) / INCHES_PER_YARD;
  return roundUpYards(Math.min(strips(widthInches, lengthInches), strips(lengthInches, widthInches)));
}

/** What a quilt's cloth is reckoned with besides its size. */
export interface QuiltAllowances {
  /** Cloth cut for the top over its finished area. */
  readonly piecing: number;
  /** Backing over the top, each way. */
  readonly overInches: number;
  readonly bindingYards: number;
  readonly usableInches: number;
}

/** Square yards of cloth in a quilt: pieced top, backing and binding. @param widthInches of the finished top */
export const quiltClothSquareYards = (
  widthInches: number,
  lengthInches: number,
  { piecing, overInches, bindingYards, usableInches }: QuiltAllowances,
): number =>
  squareYards(widthInches, lengthInches) * piecing +
  squareYards(widthInches + overInches, lengthInches + overInches) +
  squareYards(usableInches, bindingYards * INCHES_PER_YARD);
