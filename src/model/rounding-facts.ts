import type { Facts } from './fact.ts';

/** How far two numbers that are equal on paper may differ in a computer. */
export const roundingFacts = {
  hair: {
    value: 1e-9,
    unit: 'ratio',
    range: [1e-12, 1e-6],
    source: 'a number holds about 15 digits; a season adds up some ten thousand of them',
    mark: 'assumption',
  },
} as const satisfies Facts;
