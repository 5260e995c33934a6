import type { Language } from '../../../language/language.ts';
import { weaving as en } from '../../../language/messages/en/pictures/weaving.ts';
import { weaving as es } from '../../../language/messages/es/pictures/weaving.ts';

export type WeavingWords = typeof en;

/** The words of this picture; they come with it, so that the first view need not carry them. */
export const weavingWords = (language: Language): WeavingWords => (language === 'es' ? es : en);
