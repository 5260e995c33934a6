import type { Words } from '../../language/words.ts';
import type { OutcomeKey } from '../../model/season-outcomes.ts';
import { differencePrinted, outcomePrinted } from '../../workings/outcome-style.ts';
import { printed } from '../season/printed.ts';

/** An outcome in the reader's units; a dash where the season has no such thing. */
export const outcomeText = (key: OutcomeKey, value: number | null, words: Words): string =>
  value === null ? '–' : printed(outcomePrinted(key, value), words);

/** How far two outcomes lie apart, without a sign, in the reader's units; shares in points, not per cent of per cent. */
export function distanceText(key: OutcomeKey, difference: number, words: Words): string {
  const { kind, decimals } = differencePrinted(key, difference);
  return printed({ as: kind, value: Math.abs(difference), ...(decimals === undefined ? {} : { decimals }) }, words);
}

/** A difference with its sign; one too small to print carries none. */
export const signedText = (key: OutcomeKey, difference: number | null, words: Words): string =>
  difference === null ? '–' : printed(differencePrinted(key, difference), words);
