import type { Language } from '../../language/language.ts';
import { farm as en } from '../../language/messages/en/farm.ts';
import { farm as es } from '../../language/messages/es/farm.ts';

/** The words of this page and of own farms' links; they come with the pages that need them, not with the first view. */
export type FarmWords = typeof en;
export const farmWords = (language: Language): FarmWords => (language === 'es' ? es : en);
