import type { Facts } from './fact.ts';

/** How an input is shown back to the one who typed it. */
export const problemFacts = {
  longestPiece: {
    value: 80,
    unit: 'characters',
    range: [40, 200],
    source: 'one line of a terminal',
    mark: 'common practice',
  },
} as const satisfies Facts;
