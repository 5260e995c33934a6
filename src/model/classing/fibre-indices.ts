import { consistencyTerms, office } from './facts.ts';

/**
 * Short fibre index, percent, from length and uniformity. Formula from memory; the published relation has R2 0.99
 * (Knowlton, Beltwide 2002).
 * @returns null where the formula runs below zero: long Pima lies outside its range
 */
export function shortFibreIndex(lengthIn: number, uniformityPercent: number): number | null {
  const { sfiConstant, sfiPerInch, sfiPerUniformity } = office;
  const index = sfiConstant.value + sfiPerInch.value * lengthIn + sfiPerUniformity.value * uniformityPercent;
  return index < 0 ? null : index;
}

/** What the consistency index is made of: one bale's instrument values. */
export interface ConsistencyInput {
  readonly strengthGPerTex: number;
  readonly micronaire: number;
  readonly lengthIn: number;
  readonly uniformityPercent: number;
  readonly reflectanceRd: number;
  readonly yellownessB: number;
}

/** Spinning consistency index, a mill's single figure for laying down bales; no unit. Formula from memory. */
export function spinningConsistencyIndex(bale: ConsistencyInput): number {
  const terms = consistencyTerms;
  return (
    terms.constant.value +
    terms.strength.value * bale.strengthGPerTex +
    terms.micronaire.value * bale.micronaire +
    terms.length.value * bale.lengthIn +
    terms.uniformity.value * bale.uniformityPercent +
    terms.reflectance.value * bale.reflectanceRd +
    terms.yellowness.value * bale.yellownessB
  );
}
