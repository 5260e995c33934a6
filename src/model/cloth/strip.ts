import { MM_PER_INCH } from '../units.ts';
import { stripFacts } from './wash-facts.ts';

const centinewtonsPerNewton = 100;

/** Force that breaks a strip of 5 cm, N: the threads along it times what each bears. @param tex as the thread lies, all plies */
export const stripNewtons = (threadsPerInch: number, tex: number, tenacityCnPerTex: number): number =>
  (((threadsPerInch * stripFacts.widthMm.value) / MM_PER_INCH) *
    tex *
    tenacityCnPerTex *
    stripFacts.threadsTogether.value) /
  centinewtonsPerNewton;

/** Strength of a strip over its mass a length, cN/tex: grams a square metre times mm of width are tex. */
export const stripTenacity = (newtons: number, widthMm: number, gramsPerSquareMetre: number): number =>
  (newtons * centinewtonsPerNewton) / (gramsPerSquareMetre * widthMm);
