import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { ClassedBale } from '../../../model/classing/class-bales.ts';
import type { Season } from '../../../model/season.ts';
import { kilogramsFromPounds, MM_PER_INCH, THIRTY_SECONDS_PER_INCH } from '../../../model/units.ts';
import { type ClassingWords, classingWords } from './classing-words.ts';
import { type PictureLedger, pictureLedger } from './picture-ledger.ts';

/** A season's classing as its picture tells it, of one bale. */
export interface Told {
  readonly season: Season;
  readonly words: Words;
  readonly own: ClassingWords;
  readonly bale: ClassedBale;
  readonly ledger: PictureLedger;
}

/** What the picture is about: the season's first bale; null where no bale was classed. */
export function toldOf(season: Season, words: Words): Told | null {
  const ledger = pictureLedger(season, 'classing', words);
  const bale = season.classing?.classed[0];
  if (!ledger || !bale || !ledger.inflow.has('lot') || !ledger.outflow.has('lot')) return null;
  return { season, words, own: classingWords(words.language), bale, ledger };
}

export const lengthText = ({ words }: Told, inches: number): string =>
  words.formats.fibreLength(inches * MM_PER_INCH).text;
export const stapleText = ({ bale, own }: Told): string =>
  bale.byEye
    ? fill(own.staple, { staple: bale.byEye.staple.sixteenthsName })
    : `${bale.staple32nds}/${THIRTY_SECONDS_PER_INCH}`;
export const gradeText = ({ bale }: Told): string => `${bale.color}-${bale.leaf}-${bale.staple32nds}`;
export const weightText = ({ words, bale }: Told): string =>
  words.formats.mass(kilogramsFromPounds(bale.paidLb), 0).text;
export const totalText = ({ words, bale }: Told): string => words.formats.centsPerPound(bale.priceCentsPerLb).text;
export const valueText = (told: Told): string =>
  fill(told.own.price.value, { weight: weightText(told), money: told.words.formats.money(told.bale.valueUsd) });
export const balesText = ({ season, words }: Told): string =>
  words.formats.plural(season.classing?.classed.length ?? 0, words.messages.cloth.bale.bales);
