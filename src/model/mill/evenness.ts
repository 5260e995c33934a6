import { evennessFacts, type SpinningSystem } from './facts.ts';

/** Unevenness of fibres laid down at random, CV %: factor / sqrt(n). The factor is 106 for cotton, 100 for fibres all alike. */
export const limitVariationPercent = (fibres: number, factor: number = evennessFacts.limitFactor.value): number =>
  factor / Math.sqrt(fibres);

/** Index of irregularity: actual over limit. */
export const irregularityIndex = (variationPercent: number, limitPercent: number): number =>
  variationPercent / limitPercent;

/**
 * Mass unevenness of a yarn, CV %. The carded or rotor index times the random limit; short fibre worsens it, noil taken
 * out improves it by the published 0.15 U % a point.
 *
 * Good for medium counts, about 10s to 40s. One index serves every count, though a survey of 438 mill yarns found that it
 * hangs on the count (Canada, 1956 to 1960): what the machines add does not shrink with the random part. So coarse yarn
 * comes out too even (4s at half of what mills find) and fine combed yarn too uneven. No published sizes were read to mend it.
 * @param shortFibrePercent by weight, in the carded lint
 * @param noilPercent taken out by the comber, 0 where there is none
 */
export function yarnVariationPercent(
  system: SpinningSystem,
  fibres: number,
  shortFibrePercent: number,
  noilPercent: number,
): number {
  const facts = evennessFacts;
  const limit = limitVariationPercent(fibres);
  const base = system === 'rotor' ? facts.rotorIndex.value : facts.ringCardedIndex.value;
  const index =
    base + facts.indexPerShortFibrePoint.value * (shortFibrePercent - facts.shortFibreReferencePercent.value);
  const combing =
    system === 'ringCombed' ? facts.unevennessPerNoilPoint.value * facts.variationPerUnevenness.value * noilPercent : 0;
  return Math.max(facts.bestIndex.value * limit, index * limit - combing);
}
