import { TEX_TIMES_NE } from '../units.ts';
import { type SpinningSystem, strengthFacts } from './facts.ts';

/**
 * Share of the fibre's strength that the yarn uses: inside the published band of its system, higher for longer staple, for
 * more fibres in the section and for more noil combed out.
 * @param noilPercent taken out by the comber, 0 where there is none
 * @returns fraction
 */
export function strengthUse(
  system: SpinningSystem,
  upperHalfMeanInches: number,
  fibres: number,
  noilPercent: number,
): number {
  const facts = strengthFacts;
  const [low, usual, high] =
    system === 'rotor'
      ? [facts.rotorUseLow.value, facts.rotorUse.value, facts.rotorUseHigh.value]
      : [facts.ringUseLow.value, facts.ringUse.value, facts.ringUseHigh.value];
  const use =
    usual +
    facts.usePerInch.value * (upperHalfMeanInches - facts.useReferenceInches.value) +
    facts.usePerFibre.value * (fibres - facts.useReferenceFibres.value);
  const combing = system === 'ringCombed' ? 1 + facts.gainPerNoilPoint.value * noilPercent : 1;
  return Math.min(high, Math.max(low, use * combing));
}

/**
 * Single-yarn tenacity, cN/tex, from the fibre's bundle strength in g/tex.
 * @param noilPercent taken out by the comber, 0 where there is none
 */
export const yarnTenacityCnPerTex = (
  system: SpinningSystem,
  strengthGPerTex: number,
  upperHalfMeanInches: number,
  fibres: number,
  noilPercent: number,
): number =>
  strengthGPerTex *
  strengthFacts.centinewtonsPerGram.value *
  strengthUse(system, upperHalfMeanInches, fibres, noilPercent);

/**
 * Count-strength product: Ne x the breaking load of a lea in pounds. The count drops out, since a lea of any count holds
 * 160 strands.
 * @param bundleEfficiency share of the single-yarn strength that the lea shows
 */
export const countStrengthProduct = (
  tenacityCnPerTex: number,
  bundleEfficiency: number = strengthFacts.bundleEfficiency.value,
): number =>
  (TEX_TIMES_NE * strengthFacts.leaStrands.value * (tenacityCnPerTex / 100) * bundleEfficiency) /
  strengthFacts.newtonsPerPound.value;
