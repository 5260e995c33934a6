import { micronaireFacts } from './fibre-facts.ts';
import { readBeard } from './length/beard.ts';
import type { LengthDistribution } from './length/length-distribution.ts';
import { shortFibrePercent } from './length/statistics.ts';

/** Which of the two cottons of the American trade: they are graded by different charts. */
export type CottonKind = 'upland' | 'pima';

/** The fibre in a lot's lint. */
export interface Fibre {
  readonly kind: CottonKind;
  /** The length distribution, from the boll to the comber. */
  readonly lengths: LengthDistribution;
  /** True mass per length, millitex (mg per km), mean over the lint. */
  readonly linearDensityMtex: number;
  /** Maturity ratio: how far the wall is filled; about 0.85 to 1 in mature upland. */
  readonly maturityRatio: number;
  /** Bundle strength at 1/8 inch gauge, g/tex. */
  readonly strengthGPerTex: number;
  /** How much this cotton breaks in a machine, 1 for upland of 30 g/tex; stronger cotton less. */
  readonly breakTendency: number;
  /** Reflectance Rd, percent, of the lint itself (trash shows darker at the classing office). */
  readonly reflectanceRd: number;
  /** Yellowness +b, Hunter units. */
  readonly yellownessB: number;
  /** Neps against picked cotton before the gin, ratio. */
  readonly nepsRatio: number;
}

/**
 * Micronaire from true linear density and maturity: Lord's relation MR x H = 3.86 X^2 + 18.16 X + 13, solved for X.
 * Source: Lord 1956, from memory. This is the only place the reading is made.
 */
export function micronaireOf(linearDensityMtex: number, maturityRatio: number): number {
  const product = linearDensityMtex * maturityRatio;
  const square = micronaireFacts.square.value;
  const halfSlope = micronaireFacts.slope.value / 2;
  const root = Math.sqrt(Math.max(0, halfSlope ** 2 - square * (micronaireFacts.constant.value - product)));
  return (root - halfSlope) / square;
}

/** Fibre readings as an instrument without noise would give them. */
export interface FibreReading {
  readonly upperHalfMeanMm: number;
  readonly uniformityPercent: number;
  readonly shortFibrePercentByWeight: number;
  readonly strengthGPerTex: number;
  readonly micronaire: number;
}

/** Reads a lot's fibre. */
export function readFibre(fibre: Fibre): FibreReading {
  const beard = readBeard(fibre.lengths);
  return {
    upperHalfMeanMm: beard.upperHalfMeanMm,
    uniformityPercent: beard.uniformityPercent,
    shortFibrePercentByWeight: shortFibrePercent(fibre.lengths, 'weight'),
    strengthGPerTex: fibre.strengthGPerTex,
    micronaire: micronaireOf(fibre.linearDensityMtex, fibre.maturityRatio),
  };
}
