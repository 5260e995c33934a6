import type { Checked } from '../problem.ts';
import { type AverageName, type ChainAverages, statedAverages, type TraceCase } from './chain-averages.ts';
import type { TraceRequest } from './need.ts';
import { type Trace, traceProject } from './trace-project.ts';

/** A project followed back three times: with all stated ranges at the end that asks less, as stated, and at the other end. */
export type TraceCases = Readonly<Record<TraceCase, Trace>>;

/** Yields of the mill. A season's are reckoned from averages of the trade, so they have its range about their own value. */
const millNames = ['finishingYield', 'weavingYield', 'yarnRealisation', 'battingYield'] as const;
export const isMillYield = (name: AverageName): name is (typeof millNames)[number] =>
  (millNames as readonly AverageName[]).includes(name);

/** A season's value moved as far as an end of a stated range lies from the stated value. */
export const movedToEnd = (own: number, end: number, stated: number): number => (own * end) / stated;

/**
 * A season's own averages in one of the three cases: what was counted in its field and weighed at its gin stays as it was;
 * its mill's yields move with the stated ranges.
 */
export function ownAverages(averages: Partial<ChainAverages>, at: TraceCase): Partial<ChainAverages> {
  const [ends, stated] = [statedAverages(at), statedAverages('middle')];
  const moved = millNames.flatMap((name) => {
    const own = averages[name];
    return own === undefined ? [] : [[name, movedToEnd(own, ends[name], stated[name])] as const];
  });
  return { ...averages, ...Object.fromEntries(moved) };
}

/**
 * The three cases of a trace.
 * @param averages a season's own; what is not named is taken from the stated facts and their ranges
 */
export function traceInCases(request: TraceRequest, averages: Partial<ChainAverages> = {}): Checked<TraceCases> {
  const low = traceProject(request, ownAverages(averages, 'low'), 'low');
  if (!low.ok) return low;
  const middle = traceProject(request, averages, 'middle');
  if (!middle.ok) return middle;
  const high = traceProject(request, ownAverages(averages, 'high'), 'high');
  if (!high.ok) return high;
  return { ok: true, value: { low: low.value, middle: middle.value, high: high.value } };
}
