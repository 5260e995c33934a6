import type { Prediction } from './prediction.ts';

/** The share of the foreign matter that the seed-cotton cleaners take out, percent. */
export const cleaningPrediction: Prediction = {
  quantity: 'sharePercent',
  low: 0,
  high: 100,
  step: 1,
  reading: 'trashTaken',
  answer: ({ cleaning }) => (cleaning ? 100 * cleaning.trashRemovedFraction : null),
};
