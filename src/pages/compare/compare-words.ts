import type { Language } from '../../language/language.ts';
import { compare as en } from '../../language/messages/en/compare.ts';
import { compare as es } from '../../language/messages/es/compare.ts';

/** The words of comparing; they come with the page that compares. */
export type CompareWords = typeof en;
export const compareWords = (language: Language): CompareWords => (language === 'es' ? es : en);
