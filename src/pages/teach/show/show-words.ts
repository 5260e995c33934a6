import type { Language } from '../../../language/language.ts';
import { show as en } from '../../../language/messages/en/show.ts';
import { show as es } from '../../../language/messages/es/show.ts';

/** The words of the show and its notes; they come with those pages. */
export type ShowWords = typeof en;
export const showWords = (language: Language): ShowWords => (language === 'es' ? es : en);
