import type { Language } from '../../../language/language.ts';
import { ginning as en } from '../../../language/messages/en/pictures/ginning.ts';
import { ginning as es } from '../../../language/messages/es/pictures/ginning.ts';

/** The words of this picture; they come with it, so that the first view need not carry them. */
export const ginningWords = (language: Language): typeof en => (language === 'es' ? es : en);
