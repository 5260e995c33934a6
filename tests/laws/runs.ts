/** Whether the full counts were asked for (npm run test:long). */
export const long = process.env.SEAMFIELD_LONG === '1';

/** How many cases a property runs: a reduced count in every test run, the full one in the long run. */
export const runs = (full: number): number => (long ? full : Math.max(20, Math.round(full / 10)));

/** All of a list in the long run; otherwise every second, the others for the next case, so that all are seen. */
export const inTurn = <Each>(all: readonly Each[], turn: number): readonly Each[] =>
  long ? all : all.filter((_, i) => (i + turn) % 2 === 0);

/** What a law of whole seasons may take, ms: it is a bound against hanging, not a measure. */
export const patience = long ? 1_800_000 : 300_000;

/** One seed for every property, so that a failure on one machine is a failure on all. */
export const propertySeed = 20250711;
