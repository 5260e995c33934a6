import type { Language } from '../../../language/language.ts';
import { classing as en } from '../../../language/messages/en/pictures/classing.ts';
import { classing as es } from '../../../language/messages/es/pictures/classing.ts';

export type ClassingWords = typeof en;

/** The words of this picture; they come with it, so that the first view need not carry them. */
export const classingWords = (language: Language): ClassingWords => (language === 'es' ? es : en);
