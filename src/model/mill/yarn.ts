import { type Fibre, readFibre } from '../fibre.ts';
import { meanLengthMm, shortFibrePercent } from '../length/statistics.ts';
import { asNe, inchesFromMillimetres, texFromNe } from '../units.ts';
import { irregularityIndex, limitVariationPercent, yarnVariationPercent } from './evenness.ts';
import type { SpinningSystem, YarnUse } from './facts.ts';
import { fibreEndsPerCm } from './hairiness.ts';
import { fibresInSection } from './limits.ts';
import { countStrengthProduct, yarnTenacityCnPerTex } from './strength.ts';
import { turnsPerInch, twistMultiplier } from './twist.ts';

/** A single yarn and how it will behave. */
export interface Yarn {
  readonly ne: number;
  readonly tex: number;
  readonly system: SpinningSystem;
  readonly combed: boolean;
  readonly fibresInSection: number;
  readonly twistMultiplier: number;
  readonly turnsPerInch: number;
  /** Mass unevenness, CV %. */
  readonly cvPercent: number;
  /** Unevenness that fibres laid at random would give, CV %. */
  readonly limitCvPercent: number;
  readonly irregularityIndex: number;
  readonly tenacityCnPerTex: number;
  /** Ne x lea strength in pounds. */
  readonly countStrengthProduct: number;
  /** Fibre ends in a centimetre of yarn, where hairs start. */
  readonly fibreEndsPerCm: number;
  readonly meanFibreLengthMm: number;
  readonly shortFibrePercentByWeight: number;
}

/**
 * What a count spun from a fibre is like.
 * @param carded the fibre after the card (its short fibre sets the unevenness before combing)
 * @param drawn the fibre that is spun: after the comber where there is one
 * @param noilPercent noil taken, 0 where there is no comber
 */
export function describeYarn(
  system: SpinningSystem,
  countNe: number,
  use: YarnUse,
  carded: Fibre,
  drawn: Fibre,
  noilPercent: number,
): Yarn {
  const tex = texFromNe(asNe(countNe));
  const fibres = fibresInSection(tex, drawn.linearDensityMtex);
  const upperHalfMeanInches = inchesFromMillimetres(readFibre(drawn).upperHalfMeanMm);
  const multiplier = twistMultiplier(use, upperHalfMeanInches, system);
  const cvPercent = yarnVariationPercent(system, fibres, shortFibrePercent(carded.lengths, 'weight'), noilPercent);
  const limitCvPercent = limitVariationPercent(fibres);
  const tenacity = yarnTenacityCnPerTex(system, drawn.strengthGPerTex, upperHalfMeanInches, fibres, noilPercent);
  const meanFibreLengthMm = meanLengthMm(drawn.lengths, 'number');
  return {
    ne: countNe,
    tex,
    system,
    combed: system === 'ringCombed',
    fibresInSection: fibres,
    twistMultiplier: multiplier,
    turnsPerInch: turnsPerInch(multiplier, countNe),
    cvPercent,
    limitCvPercent,
    irregularityIndex: irregularityIndex(cvPercent, limitCvPercent),
    tenacityCnPerTex: tenacity,
    countStrengthProduct: countStrengthProduct(tenacity),
    fibreEndsPerCm: fibreEndsPerCm(fibres, meanFibreLengthMm),
    meanFibreLengthMm,
    shortFibrePercentByWeight: shortFibrePercent(drawn.lengths, 'weight'),
  };
}
