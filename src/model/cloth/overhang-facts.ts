import type { Facts } from '../fact.ts';

/** How a hanging strip is worked out. */
export const overhangFacts = {
  steps: {
    value: 120,
    unit: 'count',
    range: [60, 400],
    source: 'pieces into which a strip is cut to follow its curve; more change nothing that can be seen',
    mark: 'assumption',
  },
  halvings: {
    value: 48,
    unit: 'count',
    range: [30, 60],
    source: 'halvings in the search for the bend at the table; more change no digit',
    mark: 'assumption',
  },
  sharpest: {
    value: 4,
    unit: 'ratio',
    range: [3, 10],
    source: 'sharpest bend at the table that is tried, in quarter turns over the bending length',
    mark: 'assumption',
  },
  /** Peirce: c = L (cos(t/2) / (8 tan t))^(1/3). */
  peirceEight: {
    value: 8,
    unit: 'ratio',
    source: 'Peirce 1930, as printed in scribd 52213225 and used in GATE 2020 (Indian Institutes of Technology)',
    mark: 'published',
  },
} as const satisfies Facts;
