import type { Fibre } from '../../../src/model/fibre.ts';
import { breakAtRandom, breakByLength } from '../../../src/model/length/breakage.ts';
import { machineBreakagePerMm } from '../../../src/model/length/facts.ts';
import { gaussianByMass, type LengthDistribution } from '../../../src/model/length/length-distribution.ts';
import { removeByLength, solveRemoval } from '../../../src/model/length/removal.ts';
import { type Lot, partMasses } from '../../../src/model/lot.ts';

/** A saw lint cleaner: breaks, then takes a share of the lint that favours short fibre. */
function lintCleaned(lengths: LengthDistribution, lossFraction: number): LengthDistribution {
  const broken = breakByLength(lengths, machineBreakagePerMm.sawLintCleaner.value);
  const chance = (lengthMm: number, amount: number) => amount * (0.03 + Math.exp(-lengthMm / 6));
  const amount = solveRemoval(broken, chance, lossFraction, [0, 1]);
  return removeByLength(broken, (lengthMm) => chance(lengthMm, amount)).kept;
}

/** Medium upland as two saw lint cleaners leave it: upper half mean 28.2 mm, uniformity 81.2 %. */
const mediumLengths: LengthDistribution = lintCleaned(
  lintCleaned(
    breakByLength(breakAtRandom(gaussianByMass(30.7, 0.16), 0.0087), machineBreakagePerMm.sawStand.value),
    0.02,
  ),
  0.012,
);

/** Fibre of a medium upland bale. */
export const mediumFibre: Fibre = {
  kind: 'upland',
  lengths: mediumLengths,
  linearDensityMtex: 172,
  maturityRatio: 0.91,
  strengthGPerTex: 29,
  breakTendency: 1,
  reflectanceRd: 76,
  yellownessB: 8.5,
  nepsRatio: 3,
};

/** Fibre of a Pima bale from a roller gin. */
export const pimaFibre: Fibre = {
  ...mediumFibre,
  kind: 'pima',
  lengths: breakByLength(breakAtRandom(gaussianByMass(40, 0.12), 0.0037), 0.003 * 0.72),
  linearDensityMtex: 150,
  strengthGPerTex: 42,
  breakTendency: 0.72,
};

/** One bale of lint, about 475 lb dry, with the given foreign matter (share of the dry mass), mostly leaf. */
export function baledLint(foreignShare: number, fibre: Fibre = mediumFibre): Lot {
  const dryKg = 215;
  const trash = dryKg * foreignShare;
  return {
    dryKg: partMasses({
      lint: dryKg - trash,
      leaf: 0.74 * trash,
      motes: 0.14 * trash,
      burs: 0.04 * trash,
      sticks: 0.04 * trash,
      dirt: 0.02 * trash,
      seed: 0.02 * trash,
    }),
    waterKg: { lint: 13, seed: 0.01 * trash, trash: 0.08 * trash },
    fibre,
  };
}
