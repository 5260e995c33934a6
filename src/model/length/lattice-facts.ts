import type { Facts } from '../fact.ts';

/** How finely lengths are held. */
export const latticeFacts = {
  stepMm: {
    value: 0.5,
    unit: 'mm',
    range: [0.25, 1],
    source: 'at this step closed forms of the length laws come out within 0.01 points or millimetres by weight',
    mark: 'derived',
  },
  lengthCount: {
    value: 130,
    unit: 'lengths',
    range: [120, 160],
    source: '65 mm: above the longest Sea Island fibre',
    mark: 'assumption',
  },
} as const satisfies Facts;

/** How long the searches for a length or a cut go on. */
export const searchFacts = {
  halvings: {
    value: 60,
    unit: 'halvings',
    range: [50, 100],
    source: 'past the 53 binary digits of a number',
    mark: 'derived',
  },
  cardHalvings: {
    value: 20,
    unit: 'halvings',
    range: [15, 40],
    source: 'of the bracket of breaks: leaves the uniformity within 1e-4 of the card',
    mark: 'derived',
  },
  cardCorrections: {
    value: 6,
    unit: 'corrections',
    range: [5, 10],
    source: 'of the centre: each leaves about a tenth of the miss',
    mark: 'derived',
  },
  nodeMm: {
    value: 1e-6,
    unit: 'mm',
    range: [1e-9, 1e-4],
    source: 'nearer than this a tangent is taken to start at the lattice point',
    mark: 'assumption',
  },
} as const satisfies Facts;
