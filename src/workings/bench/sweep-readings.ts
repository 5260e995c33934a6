import type { SweepInput, SweepPlace } from '../../model/bench/sweep.ts';
import type { SweepLimit } from '../../model/bench/sweep-limits.ts';
import { sweepTable } from '../../model/mill/bench-limit-facts.ts';
import { bindingFact } from '../../model/mill/limits.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import { above, exact, procedure, read, step } from '../steps.ts';
import { type BenchReading, onBench, reading } from './bench-reading.ts';

/** A place on the axis of a curve, as it is written. */
function placed(input: SweepInput, at: number): BenchReading['shown'] {
  switch (input) {
    case 'staple':
      return { as: 'fibreLength', value: at * MM_PER_INCH };
    case 'shortFibre':
      return { as: 'percent', value: at, decimals: 1 };
    case 'micronaire':
      return { as: 'number', value: at, decimals: 2 };
    case 'count':
      return { as: 'number', value: at, decimals: 0 };
  }
}

/** A place of a curve. */
export const placeSwept = (input: SweepInput, at: number): BenchReading =>
  reading(
    'place',
    procedure(
      [
        step('sweptFrom', exact(sweepTable.ranges[input].low), read(sweepTable)),
        step('sweptTo', exact(sweepTable.ranges[input].high), read(sweepTable)),
        step('sweptHere', exact(at), onBench),
      ],
      placed(input, at),
    ),
  );

/** Where a curve crosses a limit: what the limit allows on both sides of it, and the count wanted. */
export function limitCrossed(input: SweepInput, { bounds, reason, at }: SweepLimit, places: readonly SweepPlace[]) {
  const ordered = [...places].sort((one, other) => one.at - other.at);
  const after = ordered.findIndex((place) => place.at >= at);
  const sides = ordered.slice(Math.max(0, after - 1), after + 1);
  const { system } = places[0]!.bench.setUp;
  const binding = bindingFact(system, { status: bounds === 'reach' ? 'impossible' : 'strained', reason });
  return reading(
    'limit',
    procedure(
      [
        ...sides.flatMap((place) => {
          const { verdict } = place.bench.warp.spinning;
          return [
            step('sweptHere', exact(place.at), onBench),
            step('countWanted', exact(place.bench.warp.singleNe, 'ne'), onBench),
            bounds === 'reach'
              ? step('ceilingNe', exact(verdict.ceilingNe, 'ne'), onBench)
              : step('comfortableNe', exact(verdict.comfortableNe, 'ne'), onBench),
          ];
        }),
        ...(binding ? [step('limitConstant', exact(binding.value), read(binding))] : []),
        step('crossing', exact(at), above),
      ],
      placed(input, at),
    ),
  );
}
