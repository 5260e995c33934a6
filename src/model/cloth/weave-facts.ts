import type { Mark } from '../fact.ts';

/** Threads in one repeat of a weave, and how often a thread changes side in it. */
export const weaveTable = {
  weaves: {
    plain: { repeat: 2, intersections: 2 },
    twill: { repeat: 4, intersections: 2 },
    twill21: { repeat: 3, intersections: 2 },
    twill22: { repeat: 4, intersections: 2 },
    sateen: { repeat: 5, intersections: 2 },
  },
  unit: 'threads; changes of side',
  source:
    'the names of the weaves say it: over one under one, three over one, two over one, two over two, four over one',
  mark: 'derived' satisfies Mark,
} as const;
