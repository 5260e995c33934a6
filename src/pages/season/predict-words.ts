import type { Language } from '../../language/language.ts';
import { predict as en } from '../../language/messages/en/predict.ts';
import { predict as es } from '../../language/messages/es/predict.ts';

/** The words of the questions; they come with the season page. */
export type PredictWords = typeof en;
export const predictWords = (language: Language): PredictWords => (language === 'es' ? es : en);
