import { heatFacts } from './facts.ts';

/** DD60 of a day: degrees Fahrenheit by which the mean of high and low is above 60. */
export const dd60 = (maxF: number, minF: number): number => Math.max(0, (maxF + minF) / 2 - heatFacts.dd60BaseF.value);

/** Degree-days above a threshold under one sine wave through the low and the high (Baskerville & Emin 1969, from memory). */
function sineAbove(thresholdF: number, maxF: number, minF: number): number {
  if (maxF <= thresholdF) return 0;
  const mean = (maxF + minF) / 2;
  if (minF >= thresholdF) return mean - thresholdF;
  const halfRange = (maxF - minF) / 2;
  const angle = Math.asin((thresholdF - mean) / halfRange);
  return ((mean - thresholdF) * (Math.PI / 2 - angle) + halfRange * Math.cos(angle)) / Math.PI;
}

/** Heat units of a day between 55 and 86 °F, the Arizona way: the sine above the lower threshold less the sine above the upper. */
export const hu8655 = (maxF: number, minF: number): number =>
  sineAbove(heatFacts.hu8655LowerF.value, maxF, minF) - sineAbove(heatFacts.hu8655UpperF.value, maxF, minF);
