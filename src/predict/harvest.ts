import type { Season } from '../model/season.ts';
import type { Prediction } from './prediction.ts';

/** Dry lint and seed that hung in the open bolls, and what of it the gathering left there, kg. */
export function cottonLeft({ harvest }: Season): { readonly hungKg: number; readonly leftKg: number } | null {
  if (!harvest) return null;
  const cottonKg = (side: 'in' | 'out', account: string) =>
    harvest.ledger[side].reduce(
      (sum, { account: name, dryKg }) => (name === account ? sum + dryKg.lint + dryKg.seed : sum),
      0,
    );
  return { hungKg: cottonKg('in', 'grown'), leftKg: cottonKg('out', 'leftInField') };
}

/** The share of the lint and seed in the open bolls that stays in the field, percent. */
export const harvestPrediction: Prediction = {
  quantity: 'sharePercent',
  low: 0,
  high: 50,
  step: 1,
  answer: (season) => {
    const cotton = cottonLeft(season);
    return cotton && cotton.hungKg > 0 ? (100 * cotton.leftKg) / cotton.hungKg : null;
  },
};
