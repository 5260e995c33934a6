import type { Language } from '../../language/language.ts';
import { follow as en } from '../../language/messages/en/follow.ts';
import { follow as es } from '../../language/messages/es/follow.ts';

/** The words for following a part; they come with the page, so that the first view need not carry them. */
export const followWords = (language: Language): typeof en => (language === 'es' ? es : en);
