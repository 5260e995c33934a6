import type { Facts } from './fact.ts';

/** How a season is paced. */
export const timelineFacts = {
  workSteps: {
    value: 48,
    unit: 'steps',
    range: [24, 96],
    source:
      'work that is not lived day by day, sowing too, is watched in as many steps: enough to see a machine fill, few enough to step through',
    mark: 'assumption',
  },
} as const satisfies Facts;
