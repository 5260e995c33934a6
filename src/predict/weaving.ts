import type { Prediction } from './prediction.ts';

/** By how much finishing shortens the cloth along its length, percent. */
export const weavingPrediction: Prediction = {
  quantity: 'sharePercent',
  low: 0,
  high: 100,
  step: 1,
  choices: [0, 2, 5, 10, 20],
  reading: 'shrinkage',
  answer: ({ weaving }) => weaving?.cloth?.finishShrinkPercent.length ?? null,
};
