import type { Facts } from '../fact.ts';

const roy =
  'Roy, Varshney & Kothari, Dimensional behavior of interlock knitted cotton fabrics, Indian Journal of Fibre & Textile Research';
export const interlockFacts = {
  courses: { value: 5.64, unit: 'courses x loop length', source: `${roy}; reference state`, mark: 'published' },
  wales: { value: 4.0, unit: 'wales x loop length', source: `${roy}; reference state`, mark: 'published' },
  faces: {
    value: 2,
    unit: 'loops',
    range: [2, 2],
    source: 'interlock is two rib cloths knitted through each other: a loop of either shows on each face',
    mark: 'derived',
  },
} as const satisfies Facts;
