import type { Prediction } from './prediction.ts';

/** The warmest the core of the stored seed cotton gets, °F. */
export const modulePrediction: Prediction = {
  quantity: 'fahrenheit',
  low: 40,
  high: 200,
  step: 1,
  reading: 'hottestCore',
  answer: ({ module }) => (module ? Math.max(...module.coreTemperatureF.map(({ f }) => f)) : null),
};
