import type { Prediction } from './prediction.ts';

/** The side of the square that the cloth of one boll makes, inches. */
export const sewingPrediction: Prediction = {
  quantity: 'inches',
  low: 0,
  high: 12,
  step: 0.25,
  reading: 'patch',
  answer: ({ sewing }) => sewing?.patchInchesPerBoll ?? null,
};
