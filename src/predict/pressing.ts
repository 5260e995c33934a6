import type { Prediction } from './prediction.ts';

/** Bales from the whole field. The widest farm that can be made is 5000 acres: no ruler holds that. */
export const pressingPrediction: Prediction = {
  quantity: 'bales',
  low: 0,
  high: 99_999,
  step: 1,
  typed: true,
  reading: 'balesPressed',
  answer: ({ pressing }) => pressing?.bales.length ?? null,
};
