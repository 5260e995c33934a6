import type { Fact } from '../fact.ts';

/** What the machines and the sack of the harvest measure, and how fast their parts turn. */
export const harvestMachineFacts = {
  rowsAtOnce: {
    value: 6,
    unit: 'rows',
    range: [1, 6],
    source: 'six-row round-module picker, 8 acres an hour (delta machinery budgets)',
    mark: 'published',
  },
  handSackFeet: {
    value: 9,
    unit: 'ft',
    range: [6, 12],
    source: 'a picking sack dragged between the rows, of six to twelve feet',
    mark: 'common practice',
  },
  stripperRollTurnsPerMinute: {
    value: 600,
    unit: 'turns/min',
    range: [400, 1000],
    source: 'stripping rolls of brushes and bats',
    mark: 'memory',
  },
  fieldCleanerTurnsPerMinute: {
    value: 400,
    unit: 'turns/min',
    range: [250, 550],
    source: 'primary saw of a burr extractor on the stripper',
    mark: 'memory',
  },
} as const satisfies Record<string, Fact>;
