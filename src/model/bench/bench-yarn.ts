import { readFibre } from '../fibre.ts';
import type { Lot } from '../lot.ts';
import type { YarnUse } from '../mill/facts.ts';
import { fibreEndsPerCm } from '../mill/hairiness.ts';
import { type SpinningOutcome, spin } from '../mill/spin.ts';
import { spindleMinutesPerKilometre } from '../mill/spindle-time.ts';
import { turnsPerInch, turnsPerMetre, twistMultiplier } from '../mill/twist.ts';
import { parseYarnNumber, type YarnNumber } from '../mill/yarn-number.ts';
import { inchesFromMillimetres, neFromTex } from '../units.ts';
import type { SetUp } from './set-up.ts';

/** One of the yarns of a bench, spun of one pound of its lint. */
export interface BenchYarn {
  readonly use: YarnUse;
  readonly number: YarnNumber;
  /** Count of one single, Ne. */
  readonly singleNe: number;
  readonly spinning: SpinningOutcome;
  /** Of the single. */
  readonly twistMultiplier: number;
  readonly turnsPerInch: number;
  /** Of the whole yarn with its plies: unevenness falls with the root of their number. Null where it cannot be spun. */
  readonly cvPercent: number | null;
  /** Of the whole yarn. */
  readonly fibreEndsPerCm: number | null;
  readonly spindleMinutesPerKilometre: number | null;
}

/** Unevenness of equal singles laid together, CV %. */
export const pliedVariationPercent = (single: number, singles: number): number => single / Math.sqrt(singles);

/**
 * Spins a yarn.
 * @param text its number, as '30Ne' or '40/2Ne'
 * @throws RangeError where the text is no yarn number: a set-up holds only such as were read before
 */
export function benchYarn(lot: Lot, setUp: SetUp, text: string, use: YarnUse, twist: number | null): BenchYarn {
  const parsed = parseYarnNumber(text);
  if (!parsed.ok) throw new RangeError(`${text} is no yarn number`);
  const number = parsed.value;
  const singleNe = neFromTex(number.singleTex);
  const { system, noilPercent } = setUp;
  const spinning = spin(lot, { system, countNe: singleNe, noilPercent }, use);
  const { yarn } = spinning;
  // A count out of reach still has the twist it would ask for.
  const staple = inchesFromMillimetres(readFibre(lot.fibre).upperHalfMeanMm);
  const multiplier = twist ?? yarn?.twistMultiplier ?? twistMultiplier(use, staple, system);
  const ring = system !== 'rotor';
  return {
    use,
    number,
    singleNe,
    spinning,
    twistMultiplier: multiplier,
    turnsPerInch: turnsPerInch(multiplier, singleNe),
    cvPercent: yarn ? pliedVariationPercent(yarn.cvPercent, number.singles) : null,
    fibreEndsPerCm: yarn ? fibreEndsPerCm(yarn.fibresInSection * number.singles, yarn.meanFibreLengthMm) : null,
    spindleMinutesPerKilometre:
      yarn && ring ? spindleMinutesPerKilometre(turnsPerMetre(multiplier, singleNe)) * number.singles : null,
  };
}
