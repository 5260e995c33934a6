import type { Language } from '../../../language/language.ts';
import { spinning as en } from '../../../language/messages/en/pictures/spinning.ts';
import { spinning as es } from '../../../language/messages/es/pictures/spinning.ts';

/** The words of this picture; they come with it, so that the first view need not carry them. */
export type SpinningWords = typeof en;
export const spinningWords = (language: Language): SpinningWords => (language === 'es' ? es : en);
