import type { Prediction } from './prediction.ts';

/** Of 100 seeds sown, how many stand as plants. */
export const plantingPrediction: Prediction = {
  quantity: 'seedsOfHundred',
  low: 0,
  high: 100,
  step: 1,
  answer: ({ field }) => {
    const sown = field.counts.find(({ station }) => station === 'planting');
    const plants = sown?.shares.find(({ name }) => name === 'plants');
    return sown && plants && sown.whole.count > 0 ? (100 * plants.count) / sown.whole.count : null;
  },
};
