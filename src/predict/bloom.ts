import type { Prediction } from './prediction.ts';

/** The share of the flowers that drop as young bolls, percent. */
export const bloomPrediction: Prediction = {
  quantity: 'sharePercent',
  low: 0,
  high: 100,
  step: 1,
  choices: [10, 30, 50, 70, 90],
  reading: 'bollsDropped',
  answer: ({ field }) => {
    const flowers = field.counts.find(({ station }) => station === 'boll');
    const shed = flowers?.shares.find(({ name }) => name === 'bollsShed');
    return flowers && shed && flowers.whole.count > 0 ? (100 * shed.count) / flowers.whole.count : null;
  },
};
