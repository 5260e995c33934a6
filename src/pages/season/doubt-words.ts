import type { Language } from '../../language/language.ts';
import { doubt as en } from '../../language/messages/en/doubt.ts';
import { doubt as es } from '../../language/messages/es/doubt.ts';

/** The words of the panel of doubts; they come with it, so that the first view need not carry them. */
export type DoubtWords = typeof en;
export const doubtWords = (language: Language): DoubtWords => (language === 'es' ? es : en);

/** Camel case as words: 'squareShedDays' gives 'square shed days'. */
const spaced = (key: string): string => key.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();

/** A fact's name for people. */
export interface FactName {
  readonly text: string;
  /** The name is the model's own, which is English whatever the page speaks. */
  readonly own: boolean;
}

/** The plain name of a fact, by the last two or the last one of its keys; else the model's own name in words. */
export function factName(name: string, words: DoubtWords): FactName {
  const keys = name.split('.');
  const plain: Readonly<Record<string, string>> = words.facts;
  const last = keys.at(-1)!;
  const known = plain[keys.slice(-2).join('.')] ?? plain[last];
  if (known !== undefined) return { text: known, own: false };
  return { text: `${spaced(last)} (${spaced(keys.at(-2) ?? '')})`, own: true };
}
