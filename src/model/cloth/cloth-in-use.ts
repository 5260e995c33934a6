import { totalKg } from '../lot.ts';
import { INCHES_PER_YARD, KILO, MM_PER_INCH } from '../units.ts';
import type { BothWays, Cloth, ClothYarn } from './cloth.ts';
import { feelFacts, processFacts } from './facts.ts';
import { flameExempt, fuzzOf } from './feel.ts';
import type { Made } from './making.ts';

/** Share of the area that a shrinkage both ways leaves. */
export const areaKept = ({ length, width }: BothWays): number => (1 - length / 100) * (1 - width / 100);

/** Two shrinkages, the second on what the first has left, percent. */
export const oneAfterAnother = (first: BothWays, second: BothWays): BothWays => ({
  length: 100 - (100 - first.length) * (1 - second.length / 100),
  width: 100 - (100 - first.width) * (1 - second.width / 100),
});

/** What a sewist sees of a cloth whatever its structure: how much there is, its fuzz, its care. */
export function clothInUse(
  made: Made,
  yarn: ClothYarn,
  greySquareMetres: number,
  squareMetres: number,
  widthInches: number,
): Pick<
  Cloth,
  | 'finish'
  | 'greySquareMetres'
  | 'squareMetres'
  | 'greyGramsPerSquareMetre'
  | 'widthInches'
  | 'runningYards'
  | 'fuzz'
  | 'flameExempt'
  | 'ironDots'
  | 'ironCelsius'
> {
  const greyKg = (made.greyYarnDryKg + made.greySizeDryKg) * (1 + processFacts.regain.value);
  const metresPerInch = MM_PER_INCH / KILO;
  return {
    finish: made.finish,
    greySquareMetres,
    squareMetres,
    greyGramsPerSquareMetre: (greyKg * KILO) / greySquareMetres,
    widthInches,
    runningYards: squareMetres / (widthInches * INCHES_PER_YARD * metresPerInch ** 2),
    fuzz: fuzzOf(yarn.fibreEndsPerCm, yarn.shortFibrePercentByWeight),
    flameExempt: flameExempt((totalKg(made.finished.masses) * KILO) / squareMetres),
    ironDots: feelFacts.ironDots.value,
    ironCelsius: feelFacts.ironCelsius.value,
  };
}
