import type { Language } from '../../language/language.ts';
import { bench as en } from '../../language/messages/en/bench.ts';
import { bench as es } from '../../language/messages/es/bench.ts';

/** The words of the bench; they come with its page. */
export type BenchWords = typeof en;
export const benchWords = (language: Language): BenchWords => (language === 'es' ? es : en);
