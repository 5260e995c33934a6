import type { Fibre } from '../fibre.ts';
import { removeByLength, solveRemoval } from '../length/removal.ts';
import type { Drawn } from './card.ts';
import { comberFacts } from './waste-facts.ts';

/**
 * Combing: removes by length along a soft step whose place is solved so that the wanted noil goes.
 * @param noilPercent share of the lint fed that leaves as noil, 4 to 70
 */
export function comb(fibre: Fibre, noilPercent: number): Drawn {
  const { floor, height, softnessMm, lowestCutMm, highestCutMm, nepsKept } = comberFacts;
  const chance = (lengthMm: number, cutMm: number) =>
    floor.value + height.value / (1 + Math.exp((lengthMm - cutMm) / softnessMm.value));
  const cutMm = solveRemoval(fibre.lengths, chance, noilPercent / 100, [lowestCutMm.value, highestCutMm.value]);
  const { kept, removedFraction } = removeByLength(fibre.lengths, (lengthMm) => chance(lengthMm, cutMm));
  return { fibre: { ...fibre, lengths: kept, nepsRatio: fibre.nepsRatio * nepsKept.value }, removedFraction };
}
