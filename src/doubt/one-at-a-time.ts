import { runSeason } from '../model/chain.ts';
import type { Fact } from '../model/fact.ts';
import type { WeatherYear } from '../model/field/weather.ts';
import type { Scenario } from '../model/scenario.ts';
import { factsRead } from './facts-read.ts';
import { withFactsMoved } from './move-facts.ts';
import { type OutcomeName, type Outcomes, outcomesOf } from './outcomes.ts';
import { sortUnsureFacts, type UncertainFact } from './uncertain-facts.ts';

/** One fact moved to each end of its range, the others at their values. */
export interface Swing {
  readonly names: readonly string[];
  /** The fact as it stands. */
  readonly fact: Required<Pick<Fact, 'value' | 'unit' | 'source' | 'mark' | 'range'>> & {
    readonly note: string | null;
  };
  readonly atLow: Outcomes;
  readonly atHigh: Outcomes;
}

export interface OneAtATimeInput {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly record: WeatherYear | null;
}

/** What changed in an outcome, by the end of the range. Null where there is nothing to compare. */
export interface Change {
  readonly swing: Swing;
  readonly low: number | null;
  readonly high: number | null;
  /** The greater of the two, without its sign. */
  readonly size: number;
}

/** A season as it is, and the unsure facts it reads. */
export interface PlainSeason {
  readonly base: Outcomes;
  readonly read: readonly UncertainFact[];
}

/** Runs the season with nothing moved, and sees which unsure facts it reads: moving any other would change nothing. */
export function plainSeason({ scenario, seed, record }: OneAtATimeInput): PlainSeason {
  let base: Outcomes | undefined;
  const read = factsRead(sortUnsureFacts().moved, () => {
    base = outcomesOf(runSeason(scenario, seed, record));
  });
  return { base: base!, read };
}

/**
 * Moves each unsure fact to the low and to the high end of its range, the others at their values, with the same weather
 * and the same noise. It sees no two facts at once, so it says nothing of how they play together. Between two swings
 * every fact is at its value.
 */
export function* oneAtATime(
  { scenario, seed, record }: OneAtATimeInput,
  facts: readonly UncertainFact[],
): Generator<Swing, void> {
  for (const { names, fact } of facts) {
    const at = (to: number) => withFactsMoved([{ fact, to }], () => outcomesOf(runSeason(scenario, seed, record)));
    const { value, unit, source, mark, range, note = null } = fact;
    yield { names, fact: { value, unit, source, mark, range, note }, atLow: at(range[0]), atHigh: at(range[1]) };
  }
}

/** A change of an outcome that a season lost altogether counts in full. */
const sizeOf = (base: number, moved: number | null): number => Math.abs(moved === null ? base : moved - base);

/** Swings in the order of what they do to an outcome, the greatest first; those that do nothing are left out. */
export function rankChanges(base: Outcomes, swings: readonly Swing[], outcome: OutcomeName): Change[] {
  const from = base[outcome];
  if (from === null) return [];
  const change = (to: number | null) => (to === null ? null : to - from);
  return swings
    .map((swing): Change => {
      const low = swing.atLow[outcome];
      const high = swing.atHigh[outcome];
      return {
        swing,
        low: change(low),
        high: change(high),
        size: Math.max(sizeOf(from, low), sizeOf(from, high)),
      };
    })
    .filter(({ size }) => size > 0)
    .sort((a, b) => b.size - a.size || (a.swing.names[0]! < b.swing.names[0]! ? -1 : 1));
}
