import { classCardFacts } from '../../model/length/class-card-facts.ts';
import { yarnVariationPercent } from '../../model/mill/evenness.ts';
import { fibreEndsPerCm } from '../../model/mill/hairiness.ts';
import { fibresInSection } from '../../model/mill/limits.ts';
import { turnsPerInch, twistMultiplier } from '../../model/mill/twist.ts';
import { asNe, inchesFromMillimetres, MM_PER_INCH, texFromNe } from '../../model/units.ts';
import { readSample, type SampleCottonId, sampleCottons } from '../sample-cottons.ts';
import type { Computed } from './computed.ts';

/** A thread to compare cottons in: a common count for quilting cloth, and one linear density for both. */
const comparedNe = 30;
const comparedMtex = 170;
const mmPerCm = 10;

const read = (id: SampleCottonId) => readSample(id, 1);

/** Fibre ends in an inch of the compared thread, spun from a sample cotton. */
export function endsPerInch(id: SampleCottonId): number {
  const fibres = fibresInSection(texFromNe(asNe(comparedNe)), comparedMtex);
  return (fibreEndsPerCm(fibres, read(id).meanMm) * MM_PER_INCH) / mmPerCm;
}

/** Turns of twist in an inch of the compared thread as a ring mill would spin it for the warp. */
export function sampleTurnsPerInch(id: SampleCottonId): number {
  const inches = inchesFromMillimetres(sampleCottons[id].card.upperHalfMeanMm);
  return turnsPerInch(twistMultiplier('warp', inches, 'ringCarded'), comparedNe);
}

/** Unevenness of the compared thread along its length, CV %, carded and ring spun from a sample cotton. */
export function threadVariation(id: SampleCottonId): number {
  const fibres = fibresInSection(texFromNe(asNe(comparedNe)), comparedMtex);
  return yarnVariationPercent('ringCarded', fibres, read(id).shortPercentByWeight, 0);
}

/** What counts of single fibers rest on: the spread of lengths behind a class card. */
const restsOn = classCardFacts.uplandPeakSpread;

export const lengthQuantities = {
  'short-fibers-uneven': { as: 'plain', value: () => read('uneven').shortPercentByNumber, decimals: 0, restsOn },
  'short-fibers-even': { as: 'plain', value: () => read('even').shortPercentByNumber, decimals: 0, restsOn },
  'uniformity-medium': { as: 'percentage', value: () => sampleCottons.medium.card.uniformityPercent, decimals: 0 },
  'uniformity-uneven': { as: 'percentage', value: () => sampleCottons.uneven.card.uniformityPercent, decimals: 0 },
  'uniformity-even': { as: 'percentage', value: () => sampleCottons.even.card.uniformityPercent, decimals: 0 },
  'fiber-ends-uneven': { as: 'plain', value: () => endsPerInch('uneven'), decimals: 0, restsOn },
  'fiber-ends-even': { as: 'plain', value: () => endsPerInch('even'), decimals: 0, restsOn },
  'staple-short': { as: 'fibreLength', value: () => read('short').upperHalfMeanMm },
  'staple-medium': { as: 'fibreLength', value: () => read('medium').upperHalfMeanMm },
  'staple-long': { as: 'fibreLength', value: () => read('long').upperHalfMeanMm },
  'staple-pima': { as: 'fibreLength', value: () => read('pima').upperHalfMeanMm },
  'instrument-mean-medium': {
    as: 'fibreLength',
    value: () => (sampleCottons.medium.card.upperHalfMeanMm * sampleCottons.medium.card.uniformityPercent) / 100,
  },
  'short-fibers-in-hundred': { as: 'plain', value: () => read('medium').shortPercentByNumber, decimals: 0, restsOn },
  'short-fibers-in-hundred-pima': { as: 'plain', value: () => read('pima').shortPercentByNumber, decimals: 0, restsOn },
  'short-fiber-by-weight': { as: 'percentage', value: () => read('medium').shortPercentByWeight, decimals: 0, restsOn },
  'short-fiber-by-weight-uneven': {
    as: 'percentage',
    value: () => read('uneven').shortPercentByWeight,
    decimals: 0,
    restsOn,
  },
  'fiber-ends-short': { as: 'plain', value: () => endsPerInch('short'), decimals: 0, restsOn },
  'fiber-ends-medium': { as: 'plain', value: () => endsPerInch('medium'), decimals: 0, restsOn },
  'fiber-ends-pima': { as: 'plain', value: () => endsPerInch('pima'), decimals: 0, restsOn },
  'turns-short': { as: 'plain', value: () => sampleTurnsPerInch('short'), decimals: 0 },
  'turns-pima': { as: 'plain', value: () => sampleTurnsPerInch('pima'), decimals: 0 },
} as const satisfies Readonly<Record<string, Computed>>;
