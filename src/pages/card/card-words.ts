import type { Language } from '../../language/language.ts';
import { card as en } from '../../language/messages/en/card.ts';
import { card as es } from '../../language/messages/es/card.ts';

/** The words of the season card; they come with the pages that need them, not with the first view. */
export const cardWords = (language: Language): typeof en => (language === 'es' ? es : en);
