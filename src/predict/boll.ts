import type { Prediction } from './prediction.ts';

/** Days from the first flower of the field to its first open boll. */
export const bollPrediction: Prediction = {
  quantity: 'days',
  low: 10,
  high: 120,
  step: 1,
  answer: ({ field }) => {
    const { firstFlower, firstOpenBoll } = field.events;
    return firstFlower === null || firstOpenBoll === null ? null : firstOpenBoll - firstFlower;
  },
};
