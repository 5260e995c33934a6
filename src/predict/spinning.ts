import type { Prediction } from './prediction.ts';

/** Fibres side by side in a section of the yarn. */
export const spinningPrediction: Prediction = {
  quantity: 'fibres',
  low: 0,
  high: 9999,
  step: 1,
  typed: true,
  reading: 'fibresInSection',
  answer: ({ spinning }) => spinning?.verdict.fibresInSection ?? null,
};
