import type { Language } from '../../../language/language.ts';
import { sewing as en } from '../../../language/messages/en/pictures/sewing.ts';
import { sewing as es } from '../../../language/messages/es/pictures/sewing.ts';

/** The words of this picture; they come with it, so that the first view need not carry them. */
export const sewingWords = (language: Language): typeof en => (language === 'es' ? es : en);
