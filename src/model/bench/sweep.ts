import { benchFacts, sweepTable } from '../mill/bench-limit-facts.ts';
import type { SetUp } from './set-up.ts';
import { type WorkedBench, workBench } from './work-bench.ts';

export type SweepInput = keyof typeof sweepTable.ranges;
export const sweepInputs = Object.keys(sweepTable.ranges) as readonly SweepInput[];

/** One place of a curve. */
export interface SweepPlace {
  /** In, micronaire, percent of short fibre by weight, or Ne. */
  readonly at: number;
  readonly bench: WorkedBench;
}

/** The bench with one input changed. A mix of bales gives way to its card, since a mix has no one staple to change. */
function changed(setUp: SetUp, input: SweepInput, value: number): SetUp {
  if (input === 'count') return { ...setUp, warp: `${value}Ne`, weft: `${value}Ne` };
  const card =
    input === 'staple'
      ? { ...setUp.card, lengthIn: value }
      : input === 'micronaire'
        ? { ...setUp.card, micronaire: value }
        : { ...setUp.card, uniformityPercent: value };
  return { ...setUp, card, bales: [] };
}

const decimals = 100;
const inHundredths = (value: number): number => Math.round(value * decimals) / decimals;

/** The benches of a sweep, still to be worked out one at a time. @returns in the order of their input */
export function sweepSetUps(setUp: SetUp, input: SweepInput): readonly SetUp[] {
  const { low, high } = sweepTable.ranges[input];
  const places = benchFacts.sweepPlaces.value;
  return Array.from({ length: places }, (_, i) =>
    changed(setUp, input, inHundredths(low + ((high - low) * i) / (places - 1))),
  );
}

/** Works out one place of a sweep. Short fibre is what the uniformity comes to, not the uniformity itself. */
export function sweepPlace(setUp: SetUp, input: SweepInput): SweepPlace {
  const bench = workBench(setUp);
  return { at: inputOf(bench, input), bench };
}

/** Where a bench stands on the axis of an input. */
export function inputOf({ setUp, reading, warp }: WorkedBench, input: SweepInput): number {
  switch (input) {
    case 'staple':
      return setUp.card.lengthIn;
    case 'micronaire':
      return setUp.card.micronaire;
    case 'shortFibre':
      return reading.shortFibrePercentByWeight;
    case 'count':
      return warp.singleNe;
  }
}
