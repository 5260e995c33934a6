import type { Language } from '../../language/language.ts';
import { choice as en } from '../../language/messages/en/choice.ts';
import { choice as es } from '../../language/messages/es/choice.ts';

/** The words about the last choice; they come with the season page, so that the first view need not carry them. */
export type ChoiceWords = typeof en;
export const choiceWords = (language: Language): ChoiceWords => (language === 'es' ? es : en);
