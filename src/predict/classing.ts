import type { Prediction } from './prediction.ts';

/** The staple that most bales are given, 32nds of an inch. */
export const classingPrediction: Prediction = {
  quantity: 'staple32nds',
  low: 24,
  high: 60,
  step: 1,
  reading: 'staple',
  answer: ({ classing }) => {
    if (!classing) return null;
    const counts = new Map<number, number>();
    for (const { staple32nds } of classing.classed) counts.set(staple32nds, (counts.get(staple32nds) ?? 0) + 1);
    return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
  },
};
