import type { CottonKind } from '../fibre.ts';
import { fibreFacts, pickingFacts } from './facts.ts';

/**
 * Share of an open boll's cotton that rain takes.
 * @param rainInches rain since it opened
 * Source: Parvin et al. 2005, J. Cotton Sci. 9:115, the rain term alone.
 */
export const weatherLoss = (rainInches: number): number =>
  Math.min(1, pickingFacts.lintLostPerInchOfRain.value * rainInches);

/** Colour of lint as the instrument sees it. */
export interface LintColour {
  readonly reflectanceRd: number;
  readonly yellownessB: number;
}

/**
 * Colour of a boll's lint on the day it is picked.
 * @param rainInches rain since it opened
 * @param days since it opened
 * @param filled mass of the boll over its final mass when it opened
 */
export function weatheredColour(kind: CottonKind, rainInches: number, days: number, filled: number): LintColour {
  const facts = fibreFacts;
  const fresh = kind === 'pima' ? facts.bollPimaRd.value : facts.bollRd.value;
  const freshB = kind === 'pima' ? facts.bollPimaYellowness.value : facts.bollYellowness.value;
  const rdLost = facts.rdPerInchOfRain.value * rainInches + facts.rdPerDay.value * days;
  return {
    reflectanceRd: fresh - Math.min(facts.mostRdLost.value, rdLost),
    yellownessB:
      freshB +
      facts.yellownessPerInchOfRain.value * rainInches +
      facts.yellownessPerDay.value * days +
      facts.yellownessUnfilled.value * (1 - filled),
  };
}

/** Leaf still on the plant, 0 to 1, some days after harvest aid or frost; all of it when there was neither. */
export function leafRemaining(aidDays: number | null, frostDays: number | null): number {
  const fallen = (days: number, stays: number) =>
    stays + (1 - stays) * Math.exp(-days / pickingFacts.leafFallDays.value);
  if (aidDays !== null) return fallen(aidDays, pickingFacts.leafAfterAid.value);
  if (frostDays !== null) return fallen(frostDays, pickingFacts.leafAfterFrost.value);
  return 1;
}
