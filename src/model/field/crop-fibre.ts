import type { Fibre } from '../fibre.ts';
import { breakAtRandom } from '../length/breakage.ts';
import { blend, gaussianByMass } from '../length/length-distribution.ts';
import { KILO, MEGA } from '../units.ts';
import { fibreFacts } from './facts.ts';
import type { PickedCohort } from './picked-cotton.ts';
import type { Variety } from './varieties.ts';
import { weatheredColour } from './weathering.ts';

/** Centre of a cohort's length peak, mm: drought and cold nights in the first weeks shorten it. */
export const peakOf = (variety: Pick<Variety, 'peakMm'>, earlyStress: number, coldNights: number): number =>
  variety.peakMm *
  (1 - fibreFacts.stressShortens.value * earlyStress - fibreFacts.coldNightShortens.value * coldNights);

/**
 * Mean length by number, mm, of a peak broken at random: fibres per mm are those of the unbroken peak (its mean of 1/l,
 * to the fourth power of the spread) plus the breaks.
 */
export function meanFibreMm(peakMm: number, relativeSpread: number, brokenPerMm: number): number {
  const square = relativeSpread * relativeSpread;
  return 1 / ((1 + square + fibreFacts.normalFourthMoment.value * square * square) / peakMm + brokenPerMm);
}

/**
 * The fibre of everything picked. Linear density is lint mass over total fibre length, so thin walls show as low micronaire
 * by arithmetic; the length distributions are blended by fibre length and broken once.
 */
export function cropFibre(cohorts: readonly PickedCohort[], variety: Variety): Fibre {
  const peakGridMm = fibreFacts.peakGridMm.value;
  const lengthByPeak = new Map<number, number>();
  let fibreKm = 0;
  let lintG = 0;
  let strength = 0;
  let rd = 0;
  let yellowness = 0;
  for (const cohort of cohorts) {
    const peakMm = peakOf(variety, cohort.earlyStress, cohort.coldNights);
    const km =
      (cohort.seeds * variety.fibresPerSeed * meanFibreMm(peakMm, variety.relativeSpread, variety.brokenPerMm)) / MEGA;
    const key = Math.round(peakMm / peakGridMm);
    lengthByPeak.set(key, (lengthByPeak.get(key) ?? 0) + km);
    const colour = weatheredColour(variety.kind, cohort.rainInches, cohort.pickDay - cohort.openDay, cohort.filled);
    fibreKm += km;
    lintG += cohort.lintG;
    strength += cohort.lintG * (1 - fibreFacts.stressWeakens.value * cohort.fillStress);
    rd += cohort.lintG * colour.reflectanceRd;
    yellowness += cohort.lintG * colour.yellownessB;
  }
  const peaks = [...lengthByPeak].map(([key, share]) => ({
    lengths: gaussianByMass(key * peakGridMm, variety.relativeSpread),
    share,
  }));
  const linearDensityMtex = (lintG * KILO) / fibreKm;
  return {
    kind: variety.kind,
    lengths: breakAtRandom(blend(peaks), variety.brokenPerMm),
    linearDensityMtex,
    maturityRatio: linearDensityMtex / variety.standardFinenessMtex,
    strengthGPerTex: (variety.strengthGPerTex * strength) / lintG,
    breakTendency: variety.breakTendency,
    reflectanceRd: rd / lintG,
    yellownessB: yellowness / lintG,
    nepsRatio: 1,
  };
}
