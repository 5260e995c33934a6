import type { Season } from '../model/season.ts';
import {
  type OutcomeKey,
  outcomeKeys,
  type SeasonOutcomes,
  seasonOutcomes,
  usualColour,
} from '../model/season-outcomes.ts';

/** Differences of outcomes; null where one of the two has no such thing. */
export type Differences = Readonly<Record<OutcomeKey, number | null>>;

/** Two seasons beside each other. */
export interface Comparison {
  readonly before: SeasonOutcomes;
  readonly after: SeasonOutcomes;
  /** After less before. */
  readonly difference: Differences;
  /** The usual color grade of each. */
  readonly colour: { readonly before: string | null; readonly after: string | null };
  /** Whether both had the same weather, so that only decisions can have made the difference. */
  readonly sameWeather: boolean;
}

/** A record of something for every outcome. */
export const byOutcome = <Value>(read: (key: OutcomeKey) => Value): Record<OutcomeKey, Value> =>
  Object.fromEntries(outcomeKeys.map((key) => [key, read(key)])) as Record<OutcomeKey, Value>;

/** After less before, outcome by outcome. */
export const outcomeDifferences = (before: SeasonOutcomes, after: SeasonOutcomes): Differences =>
  byOutcome((key) => {
    const [from, to] = [before[key], after[key]];
    return from === null || to === null ? null : to - from;
  });

const sameDays = (a: Season['weather'], b: Season['weather']): boolean =>
  a === b ||
  (a.days.length === b.days.length &&
    a.days.every((day, i) => {
      const other = b.days[i]!;
      return day.maxF === other.maxF && day.minF === other.minF && day.rainInches === other.rainInches;
    }));

/** Sets two seasons beside each other. */
export function compareSeasons(before: Season, after: Season): Comparison {
  const [from, to] = [seasonOutcomes(before), seasonOutcomes(after)];
  return {
    before: from,
    after: to,
    difference: outcomeDifferences(from, to),
    colour: { before: usualColour(before), after: usualColour(after) },
    sameWeather: sameDays(before.weather, after.weather),
  };
}
