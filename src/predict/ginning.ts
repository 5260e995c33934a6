import { totalKg } from '../model/lot.ts';
import type { Prediction } from './prediction.ts';

/** The share of the load brought to the gin that goes to the seed house, percent of its weight. */
export const ginningPrediction: Prediction = {
  quantity: 'sharePercent',
  low: 0,
  high: 100,
  step: 1,
  answer: ({ module, ginning }) => {
    if (!module || !ginning) return null;
    const loadKg = totalKg(module.lot);
    return loadKg > 0 ? (100 * totalKg(ginning.seedHouse)) / loadKg : null;
  },
};
