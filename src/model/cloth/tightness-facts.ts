import type { Facts } from '../fact.ts';

/** What pressing does to a thread. */
export const tightnessFacts = {
  flattenedShare: {
    value: 0.8,
    unit: 'ratio',
    range: [0.65, 0.9],
    source:
      'threads in a beaten-up cloth are no longer round (Peirce 1937; Kemp 1958, J. Text. Inst. 49:T44, from memory); how much thinner they get is assumed',
    mark: 'assumption',
    note: 'thickness of a pressed thread over its round diameter',
  },
} as const satisfies Facts;
