import type { Facts } from '../fact.ts';

/** What a yarn number may be, and how threads are ticketed. */
export const yarnNumberFacts = {
  finestSingleTex: {
    value: 2,
    unit: 'tex',
    range: [1, 2],
    source: 'a little coarser than the 300s spun of Sea Island for lace',
    mark: 'memory',
  },
  coarsestSingleTex: {
    value: 1000,
    unit: 'tex',
    range: [500, 1000],
    source: 'a coarse roving: anything thicker is no yarn',
    mark: 'assumption',
  },
  mostSingles: {
    value: 12,
    unit: 'plies',
    range: [6, 12],
    source: 'cord; sewing threads have 2 to 6 plies',
    mark: 'assumption',
  },
  ticketPerNm: {
    value: 3,
    unit: 'ticket per Nm',
    source: 'metric ticket = 3 x resultant Nm: 80/2 is 120, 60/2 is 90 (thread-numbering table, Enumerator blog)',
    mark: 'published',
  },
} as const satisfies Facts;
