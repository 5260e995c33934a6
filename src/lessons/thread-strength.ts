import { varietyFacts } from '../model/field/variety-facts.ts';
import type { SpinningSystem } from '../model/mill/facts.ts';
import { strengthFacts } from '../model/mill/facts.ts';
import { fibresInSection } from '../model/mill/limits.ts';
import { yarnTenacityCnPerTex } from '../model/mill/strength.ts';
import { asNe, inchesFromMillimetres, NEWTONS_PER_KILOGRAM_FORCE, texFromNe } from '../model/units.ts';
import { type SampleCottonId, sampleCottons } from './sample-cottons.ts';

export const threadSystems = ['ringCarded', 'ringCombed', 'rotor'] as const satisfies readonly SpinningSystem[];
export const strengthCottons = ['short', 'medium', 'long', 'pima'] as const satisfies readonly SampleCottonId[];
type StrengthCotton = (typeof strengthCottons)[number];

/** The thread that strengths are compared in, and what the comber takes out of it. */
const threadNe = 30;
const noilPercent = 14;
const fibreMtex = 170;

const varieties = {
  short: varietyFacts.uplandShort,
  medium: varietyFacts.uplandMedium,
  long: varietyFacts.uplandLong,
  pima: varietyFacts.pima,
} as const;

/** A cotton's strength in the bundle and in a thread. */
export interface ThreadStrength {
  /** Of a bundle of fibers, g/tex, as the classing office states it. */
  readonly bundleGPerTex: number;
  /** The same and that of the thread, cN/tex. */
  readonly bundleCnPerTex: number;
  readonly threadCnPerTex: number;
  /** Share of the fibers' strength that the thread keeps. */
  readonly share: number;
  /** Weight that breaks the thread, g, and that would break it if no fiber slipped. */
  readonly breaksAtGrams: number;
  readonly allFibersGrams: number;
}

/** What a Ne 30 thread keeps of a sample cotton's strength, spun one way. */
export function threadStrength(id: StrengthCotton, system: SpinningSystem): ThreadStrength {
  const bundleGPerTex = varieties[id].strengthGPerTex.value;
  const tex = texFromNe(asNe(threadNe));
  const fibres = fibresInSection(tex, fibreMtex);
  const inches = inchesFromMillimetres(sampleCottons[id].card.upperHalfMeanMm);
  const combed = system === 'ringCombed' ? noilPercent : 0;
  const threadCnPerTex = yarnTenacityCnPerTex(system, bundleGPerTex, inches, fibres, combed);
  const bundleCnPerTex = bundleGPerTex * strengthFacts.centinewtonsPerGram.value;
  const grams = (cnPerTex: number) => (cnPerTex * tex * 10) / NEWTONS_PER_KILOGRAM_FORCE;
  return {
    bundleGPerTex,
    bundleCnPerTex,
    threadCnPerTex,
    share: threadCnPerTex / bundleCnPerTex,
    breaksAtGrams: grams(threadCnPerTex),
    allFibersGrams: grams(bundleCnPerTex),
  };
}
