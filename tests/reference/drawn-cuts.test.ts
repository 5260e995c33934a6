import { expect, test } from 'vitest';
import { breakAtRandom } from '../../src/model/length/breakage.ts';
import { shortBelowMm, uniformLength } from '../../src/model/length/length-distribution.ts';
import { meanLengthMm, shortFibrePercent } from '../../src/model/length/statistics.ts';
import { openStream } from '../../src/model/random.ts';
import { long } from '../laws/runs.ts';

const [lengthMm, breaksPerMm] = [28, 0.02];
const fibres = long ? 400_000 : 40_000;
/** How much wider chance spreads the smaller sample. */
const spread = long ? 1 : Math.sqrt(10);

/** Fibres cut one by one; cuts of a Poisson process come after exponential gaps. */
function drawn() {
  const random = openStream(20250711, 'gin');
  const gap = () => -Math.log(1 - random.uniform()) / breaksPerMm;
  let [pieces, shortPieces, squares, shortMm] = [0, 0, 0, 0];
  const add = (piece: number) => {
    pieces++;
    squares += piece * piece;
    if (piece >= shortBelowMm) return;
    shortPieces++;
    shortMm += piece;
  };
  for (let fibre = 0; fibre < fibres; fibre++) {
    let from = 0;
    for (let cut = gap(); cut < lengthMm; cut += gap()) {
      add(cut - from);
      from = cut;
    }
    add(lengthMm - from);
  }
  return {
    numberRatio: pieces / fibres,
    meanByWeightMm: squares / (lengthMm * fibres),
    shortByNumber: (100 * shortPieces) / pieces,
    shortByWeight: (100 * shortMm) / (lengthMm * fibres),
  };
}

test('breaking at random is what cuts drawn fibre by fibre give — a Poisson process, simulated', () => {
  const cuts = drawn();
  const broken = breakAtRandom(uniformLength(lengthMm), breaksPerMm);
  const off = (ours: number, theirs: number) => Math.abs(ours - theirs);
  // Three standard errors: cuts of a fibre scatter by the root of their mean.
  const threeErrors = 3 * Math.sqrt((breaksPerMm * lengthMm) / fibres);
  expect(off(cuts.numberRatio, 1 + breaksPerMm * lengthMm)).toBeLessThan(threeErrors);
  expect(off(broken.reduce((sum, count) => sum + count, 0) * lengthMm, cuts.numberRatio)).toBeLessThan(0.016);
  expect(off(meanLengthMm(broken, 'weight'), cuts.meanByWeightMm)).toBeLessThan(0.03 * spread);
  expect(off(shortFibrePercent(broken, 'number'), cuts.shortByNumber)).toBeLessThan(0.6 + 0.15 * spread);
  expect(off(shortFibrePercent(broken, 'weight'), cuts.shortByWeight)).toBeLessThan(0.06 * spread);
});
