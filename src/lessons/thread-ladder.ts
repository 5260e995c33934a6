import { catalogue } from '../model/cloth/catalogue-facts.ts';
import { yarnDiameterMm } from '../model/cloth/diameter.ts';
import { turnsPerInch, twistMultiplier } from '../model/mill/twist.ts';
import { parseYarnNumber, type YarnNumbers, yarnNumbers } from '../model/mill/yarn-number.ts';
import { MM_PER_INCH, neFromTex } from '../model/units.ts';
import { sampleCottons } from './sample-cottons.ts';

export const ladderIds = ['cloth', 'label'] as const;
export type LadderId = (typeof ladderIds)[number];

/** The number on a label of sewing thread that is read in three ways. */
export const labelNumber = 50;

/** The warp of some cloths, and one label's three readings: kilometers in a kilogram, or a cotton number of two or three plies. */
const ladders = {
  cloth: {
    denim: catalogue.denim.warp,
    muslin: catalogue.muslin.warp,
    quilting: catalogue.quilting.warp,
    percale: catalogue.percale.warp,
    lawn: catalogue.lawn.warp,
    batiste: catalogue.batiste.warp,
  },
  label: { metric: `${labelNumber}Nm`, twoPly: `${labelNumber}/2Ne`, threePly: `${labelNumber}/3Ne` },
} as const satisfies Record<LadderId, Readonly<Record<string, string>>>;
export type ClothThreadId = keyof (typeof ladders)['cloth'];
export type LabelThreadId = keyof (typeof ladders)['label'];

/** A thread by every number it may carry, and how thick it is. */
export interface LadderThread {
  readonly id: string;
  readonly numbers: YarnNumbers;
  readonly plies: number;
  readonly diameterMm: number;
  readonly turnsPerMm: number;
}

/** A thread of a yarn number. @throws RangeError when it is no yarn number */
export function ladderThread(id: string, written: string): LadderThread {
  const parsed = parseYarnNumber(written);
  if (!parsed.ok) throw new RangeError(`${written} is no yarn number`);
  const { resultantTex, singles } = parsed.value;
  const stapleInches = sampleCottons.medium.card.upperHalfMeanMm / MM_PER_INCH;
  return {
    id,
    numbers: yarnNumbers(resultantTex),
    plies: singles,
    diameterMm: yarnDiameterMm(resultantTex),
    turnsPerMm:
      turnsPerInch(twistMultiplier('warp', stapleInches, 'ringCarded'), neFromTex(resultantTex)) / MM_PER_INCH,
  };
}

/** The threads of a ladder, in order. */
export const ladder = (id: LadderId): readonly LadderThread[] =>
  Object.entries(ladders[id]).map(([thread, written]) => ladderThread(thread, written));

/** @returns the thread of a cloth of the ladder */
export const clothThread = (id: ClothThreadId): LadderThread => ladderThread(id, ladders.cloth[id]);
/** @returns one reading of the label */
export const labelThread = (id: LabelThreadId): LadderThread => ladderThread(id, ladders.label[id]);
