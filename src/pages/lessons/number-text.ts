import type { Quantity } from '../../language/quantity-formats.ts';
import { makeWords, type Words } from '../../language/words.ts';
import type { NumberKind } from '../../lessons/computed/computed.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import type { LessonWords } from './lesson-words.ts';

/** A number to be written. */
export interface Writable {
  readonly as: NumberKind;
  readonly value: number;
  readonly decimals?: number;
}

const kilometresPerMile = (MM_PER_INCH * 36 * 1760) / 1e6;

function distance(km: number, words: Words, lessons: LessonWords): Quantity {
  const us = words.unitSystem === 'us';
  const { sign, name } = us ? lessons.miles : lessons.kilometers;
  const value = us ? km / kilometresPerMile : km;
  const number = words.formats.number(value, 1);
  return { number, unit: sign, text: `${number}\u00a0${sign}`, spoken: words.formats.plural(value, name, 1) };
}

/** A number in the reader's language and units. */
export function numberText({ as, value, decimals }: Writable, words: Words, lessons: LessonWords): Quantity {
  if (as === 'distance') return distance(value, words, lessons);
  const write = words.formats[as] as (value: number, decimals?: number) => Quantity;
  return write(value, decimals);
}

/** The same in the reader's units with the other units in brackets, where they differ: for paper and pages without scripts. */
export function bothTexts(number: Writable, words: Words, lessons: LessonWords): string {
  const { text } = numberText(number, words, lessons);
  const others = makeWords(words.language, words.unitSystem === 'us' ? 'metric' : 'us', words.messages);
  const other = numberText(number, others, lessons).text;
  return other === text ? text : `${text} (${other})`;
}
