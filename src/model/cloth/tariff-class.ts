import { roundingFacts } from '../rounding-facts.ts';
import { tariffFacts } from './facts.ts';
import type { WeaveId } from './weaves.ts';

/** Names of the customs schedule; 'twill' and 'tapedWarp' stand for cloths it gives no name of their own. */
export type TariffClass =
  | 'cheesecloth'
  | 'printcloth'
  | 'sheeting'
  | 'lawnVoileBatiste'
  | 'poplinBroadcloth'
  | 'oxford'
  | 'duck'
  | 'osnaburg'
  | 'sateen'
  | 'denim'
  | 'twill'
  | 'tapedWarp';

/** What the customs definitions look at. */
export interface TariffFeatures {
  readonly weave: WeaveId;
  readonly gramsPerSquareMetre: number;
  readonly endsPerCm: number;
  readonly picksPerCm: number;
  /** Average yarn number, whole. */
  readonly averageYarnNumber: number;
  /** Warp or weft of plied yarn. */
  readonly plied: boolean;
  readonly combed: boolean;
  /** Surface fibre raised. */
  readonly napped: boolean;
  /** Two or more ends woven as one. */
  readonly tapedWarp: boolean;
  /** Warp dyed in one colour, weft paler. */
  readonly dyedWarp: boolean;
}

/**
 * Average yarn number of the schedule: metric, crimp ignored, every single counted, fractions dropped.
 * @param singlesPerCm2 ends and picks per cm2 together, each single of a plied yarn counted
 */
export const averageYarnNumber = (singlesPerCm2: number, gramsPerSquareMetre: number): number =>
  // The hair keeps a number that is whole on paper from losing one to rounding.
  Math.floor((100 * singlesPerCm2) / gramsPerSquareMetre + roundingFacts.hair.value);

/** Square construction of the schedule: ends and picks nearly alike. */
export function isSquare(endsPerCm: number, picksPerCm: number): boolean {
  const together = endsPerCm + picksPerCm;
  if (together < tariffFacts.squareThreadsPerCm2.value) {
    return Math.abs(endsPerCm - picksPerCm) < tariffFacts.squareDifferencePerCm.value;
  }
  return Math.max(endsPerCm, picksPerCm) < tariffFacts.squareShare.value * together;
}

/** The schedule's name for a cotton cloth. */
export function tariffClass(cloth: TariffFeatures): TariffClass {
  const { weave, gramsPerSquareMetre, endsPerCm, picksPerCm, averageYarnNumber: number } = cloth;
  const light = gramsPerSquareMetre <= tariffFacts.lightGsm.value;
  const coarse = number <= tariffFacts.heavyNumberHigh.value;
  if (weave === 'sateen') return 'sateen';
  if (weave !== 'plain') return cloth.dyedWarp && weave !== 'twill22' ? 'denim' : 'twill';
  if (cloth.tapedWarp) return light ? 'oxford' : coarse ? 'duck' : 'tapedWarp';

  const together = endsPerCm + picksPerCm;
  const square = isSquare(endsPerCm, picksPerCm);
  if (light) {
    if (together <= tariffFacts.openThreadsPerCm2.value) return 'cheesecloth';
    if (!square) return 'poplinBroadcloth';
    if (number > tariffFacts.printclothHigh.value) return 'lawnVoileBatiste';
    const printing = number >= tariffFacts.printclothLow.value && !cloth.combed && !cloth.plied;
    return printing ? 'printcloth' : 'sheeting';
  }
  if (!coarse) return square ? 'sheeting' : 'poplinBroadcloth';
  if (cloth.plied) return 'duck';
  const rough = number <= tariffFacts.osnaburgNumberHigh.value && together < tariffFacts.osnaburgThreadsPerCm.value;
  return square && rough && !cloth.combed && !cloth.napped ? 'osnaburg' : 'sheeting';
}
