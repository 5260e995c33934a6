import type { WorkedBench } from '../../model/bench/work-bench.ts';
import type { Fact } from '../../model/fact.ts';
import type { Origin, Printed, Working } from '../working.ts';

/** One figure that the bench reports: how it is written, how it was come by, and what it rests on where that is unsure. */
export interface BenchReading {
  /** Its name among those of its part of the bench. */
  readonly key: string;
  readonly shown: Exclude<Printed, { as: 'exact' }>;
  readonly working: Working;
  readonly rests?: Pick<Fact, 'source' | 'mark'>;
}

/** The figures of one part of a bench; one that does not apply is left out. */
export type BenchReadings = (bench: WorkedBench) => readonly BenchReading[];

export const onBench: Origin = { at: 'bench' };
export const chosen: Origin = { at: 'chosen' };

/** A figure whose working ends in what is shown. */
export const reading = (key: string, working: Working, rests?: BenchReading['rests']): BenchReading => {
  const shown = working.result;
  if (shown.as === 'exact') throw new RangeError(`${key} ends in a unit of its own`);
  return rests ? { key, shown, working, rests } : { key, shown, working };
};
