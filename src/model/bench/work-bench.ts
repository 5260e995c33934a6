import { type Fibre, type FibreReading, readFibre } from '../fibre.ts';
import { shortFibrePercent } from '../length/statistics.ts';
import type { Lot } from '../lot.ts';
import { stapleLimitNe } from '../mill/limits.ts';
import { inchesFromMillimetres } from '../units.ts';
import { type BenchCloth, benchCloth } from './bench-cloth.ts';
import { type BenchYarn, benchYarn } from './bench-yarn.ts';
import { fibreOfBales, fibreOfCard, poundOfLint, trashOfBales } from './lint.ts';
import { isKnit, type SetUp } from './set-up.ts';

/** One bench worked out: its fibre, its yarns, its cloth. */
export interface WorkedBench {
  readonly setUp: SetUp;
  readonly fibre: Fibre;
  readonly reading: FibreReading;
  /** Share of the fibres, by number, below half an inch, percent. */
  readonly shortByNumberPercent: number;
  /** Mean length as the uniformity index gives it, in: what the staple limit goes by. */
  readonly meanLengthIn: number;
  readonly stapleLimitNe: number;
  readonly lot: Lot;
  readonly warp: BenchYarn;
  /** The weft; the one yarn again for a knit. */
  readonly weft: BenchYarn;
  readonly cloth: BenchCloth;
  /** Lint bought for a running yard of grey cloth, g; null where a yarn cannot be spun. */
  readonly lintGramsPerYard: number | null;
  /** Turning of one spindle for a running yard, minutes; null for rotor yarn or where a yarn cannot be spun. */
  readonly spindleMinutesPerYard: number | null;
}

/** Mean length as the uniformity index gives it, in. */
export const meanLengthIn = ({
  upperHalfMeanMm,
  uniformityPercent,
}: Pick<FibreReading, 'upperHalfMeanMm' | 'uniformityPercent'>): number =>
  inchesFromMillimetres((upperHalfMeanMm * uniformityPercent) / 100);

/** The fibre that goes into a bench: of its bales, or of its card. */
export const fibreOfSetUp = ({ bales, card }: SetUp): Fibre =>
  bales.length > 0 ? fibreOfBales(bales) : fibreOfCard(card);

/** Works out a bench. Anything legal is answered: a yarn out of reach has a verdict and no yarn, and its cloth its threads alone. */
export function workBench(setUp: SetUp): WorkedBench {
  const { bales, card, structure, use, twist } = setUp;
  const fibre = fibreOfSetUp(setUp);
  const reading = readFibre(fibre);
  const meanIn = meanLengthIn(reading);
  const lot = poundOfLint(fibre, bales.length > 0 ? trashOfBales(bales) : card.trashAreaPercent);
  const warp = benchYarn(lot, setUp, setUp.warp, use, twist);
  // A twist of one's own is the first yarn's; the weft takes the table's for weft.
  const weft = isKnit(structure) ? warp : benchYarn(lot, setUp, setUp.weft, 'weft', null);
  const cloth = benchCloth(setUp, fibre, warp, weft);
  const { yarnKilometres, gramsPerRunningYard, description } = cloth;
  const squareMetres = gramsPerRunningYard / description.gramsPerSquareMetre;
  const eachWay = [
    { yarn: warp, kilometres: yarnKilometres.warp * squareMetres },
    { yarn: weft, kilometres: yarnKilometres.weft * squareMetres },
  ];
  const sum = (of: (yarn: BenchYarn) => number | null): number | null =>
    eachWay.reduce<number | null>((total, { yarn, kilometres }) => {
      const each = of(yarn);
      return total === null || each === null ? null : total + each * kilometres;
    }, 0);
  return {
    setUp,
    fibre,
    reading,
    shortByNumberPercent: shortFibrePercent(fibre.lengths, 'number'),
    meanLengthIn: meanIn,
    stapleLimitNe: stapleLimitNe(meanIn, fibre.linearDensityMtex),
    lot,
    warp,
    weft,
    cloth,
    // tex is grams in a kilometre.
    lintGramsPerYard: sum(({ number, spinning }) =>
      spinning.yarnRealisation === null ? null : number.resultantTex / spinning.yarnRealisation,
    ),
    spindleMinutesPerYard: sum(({ spindleMinutesPerKilometre }) => spindleMinutesPerKilometre),
  };
}
