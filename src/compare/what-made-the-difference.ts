import { runSeason } from '../model/chain.ts';
import type { WeatherYear } from '../model/field/weather.ts';
import type { Scenario } from '../model/scenario.ts';
import { outcomeKeys, type SeasonOutcomes, seasonOutcomes } from '../model/season-outcomes.ts';
import { type ChangedDecision, changedDecisions, withDecision } from './changed-decisions.ts';
import { type ChangedLand, changedLand, withLand } from './changed-land.ts';
import { byOutcome, type Differences, outcomeDifferences } from './compare-seasons.ts';

/** A farm, what was decided on it, and the season number that makes its weather, unless that is a record. */
export interface Run {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly record?: WeatherYear | null;
}

/** One thing that two runs do not share: of the land, the season whose weather it is, or a decision. */
export type Change = ChangedLand | { readonly weather: true } | ChangedDecision;

/** What one change did. */
export interface Part {
  readonly change: Change;
  /** Changed alone, all else as it was before. */
  readonly alone: Differences;
  /** Changed after those that come earlier and before those that come later: these add up to the whole. */
  readonly inTurn: Differences;
  /** What the seasons run for it came to: before and after it in its turn, and with it alone. */
  readonly outcomes: {
    readonly before: SeasonOutcomes;
    readonly after: SeasonOutcomes;
    readonly alone: SeasonOutcomes;
  };
}

/** A difference taken apart. */
export interface TakenApart {
  readonly parts: readonly Part[];
  /** What the first of the two seasons came to. */
  readonly first: SeasonOutcomes;
  readonly whole: Differences;
  /** The whole less what each change did alone: what they did only together. */
  readonly together: Differences;
}

/** Seasons still to run, for a page that says how far it is. */
export interface TakingApart {
  readonly done: number;
  readonly of: number;
}

const less = (from: Differences, parts: readonly Differences[]): Differences =>
  byOutcome((key) =>
    parts.reduce<number | null>((left, part) => {
      const taken = part[key];
      return left === null || taken === null ? null : left - taken;
    }, from[key]),
  );

/** All that two runs do not share. A season meets the land before its weather, and the weather before any decision. */
export function changesBetween(before: Run, after: Run): Change[] {
  const otherWeather = before.seed !== after.seed || (before.record ?? null) !== (after.record ?? null);
  return [
    ...changedLand(before.scenario, after.scenario),
    ...(otherWeather ? [{ weather: true } as const] : []),
    ...changedDecisions(before.scenario.decisions, after.scenario.decisions),
  ];
}

/** A run with one thing as in another. */
function withChange(run: Run, change: Change, after: Run): Run {
  if ('weather' in change) return { ...run, seed: after.seed, record: after.record ?? null };
  const { scenario } = run;
  return {
    ...run,
    scenario: 'land' in change ? withLand(scenario, change) : withDecision(scenario, change, change.to),
  };
}

/**
 * Takes the difference between two runs apart, one change at a time. One season is run between two yields, so that a page
 * stays free.
 */
export function* whatMadeTheDifference(before: Run, after: Run): Generator<TakingApart, TakenApart> {
  const changes = changesBetween(before, after);
  // The first change in its turn is the first change alone.
  const of = Math.max(1, 2 * changes.length);
  let done = 0;
  function* outcomesOf({ scenario, seed, record }: Run): Generator<TakingApart, SeasonOutcomes> {
    const outcomes = seasonOutcomes(runSeason(scenario, seed, record ?? null));
    yield { done: ++done, of };
    return outcomes;
  }
  const first = yield* outcomesOf(before);
  const parts: Part[] = [];
  let run = before;
  let last = first;
  for (const change of changes) {
    const alone = yield* outcomesOf(withChange(before, change, after));
    run = withChange(run, change, after);
    const next = parts.length === 0 ? alone : yield* outcomesOf(run);
    parts.push({
      change,
      alone: outcomeDifferences(first, alone),
      inTurn: outcomeDifferences(last, next),
      outcomes: { before: last, after: next, alone },
    });
    last = next;
  }
  const whole = outcomeDifferences(first, last);
  const alone = parts.map((part) => part.alone);
  return { parts, first, whole, together: less(whole, alone) };
}

/** Outcomes of which the parts can be told: both seasons, and every one between, have such a thing. */
export const toldOutcomes = ({ whole, parts }: TakenApart) =>
  outcomeKeys.filter((key) => whole[key] !== null && parts.every(({ inTurn }) => inTurn[key] !== null));
