import type { Language } from '../../language/language.ts';
import { sources as en } from '../../language/messages/en/sources.ts';
import { sources as es } from '../../language/messages/es/sources.ts';

/** The words of this page; they come with it, so that the first view need not carry them. */
export type SourcesWords = typeof en;
export const sourcesWords = (language: Language): SourcesWords => (language === 'es' ? es : en);
