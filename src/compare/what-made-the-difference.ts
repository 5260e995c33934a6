import { runSeason } from '../model/chain.ts';
import type { WeatherYear } from '../model/field/weather.ts';
import type { Scenario } from '../model/scenario.ts';
import { type ChangedDecision, changedDecisions, withDecision } from './changed-decisions.ts';
import { byOutcome, type Differences, outcomeDifferences } from './compare-seasons.ts';
import { outcomeKeys, type SeasonOutcomes, seasonOutcomes } from './season-outcomes.ts';

/** A farm, what was decided on it, and the season number that makes its weather, unless that is a record. */
export interface Run {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly record?: WeatherYear | null;
}

/** What one decision did. */
export interface Part {
  readonly decision: ChangedDecision;
  /** Changed alone, all else as it was before. */
  readonly alone: Differences;
  /** Changed after those that come earlier in the chain and before those that come later: these add up to the whole. */
  readonly inTurn: Differences;
}

/** A difference taken apart. */
export interface TakenApart {
  readonly parts: readonly Part[];
  /** What another season number did, with the decisions of before; null where both have the same. */
  readonly weather: Differences | null;
  readonly whole: Differences;
  /** The whole less the weather and what each decision did alone: what they did only together. */
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

/** Whether two runs are of one farm: the same land under the same climate, so that decisions and weather are all that differ. */
export const sameFarm = (a: Scenario, b: Scenario): boolean =>
  a.climate === b.climate && a.era === b.era && a.acres === b.acres && a.soilWaterMm === b.soilWaterMm;

/**
 * Takes the difference between two runs of one farm apart, one decision at a time. One season is run between two yields,
 * so that a page stays free.
 * @throws RangeError where the runs are of two farms
 */
export function* whatMadeTheDifference(before: Run, after: Run): Generator<TakingApart, TakenApart> {
  if (!sameFarm(before.scenario, after.scenario)) throw new RangeError('two farms cannot be taken apart by decisions');
  const decisions = changedDecisions(before.scenario.decisions, after.scenario.decisions);
  const otherWeather = before.seed !== after.seed || (before.record ?? null) !== (after.record ?? null);
  const of = 2 * decisions.length + (otherWeather ? 2 : 1);
  let done = 0;
  function* run(scenario: Scenario, { seed, record }: Run): Generator<TakingApart, SeasonOutcomes> {
    const outcomes = seasonOutcomes(runSeason(scenario, seed, record ?? null));
    yield { done: ++done, of };
    return outcomes;
  }
  const first = yield* run(before.scenario, before);
  // The weather comes before any decision, so it goes first.
  const underWeather = otherWeather ? yield* run(before.scenario, after) : first;
  const parts: Part[] = [];
  let scenario = before.scenario;
  let last = underWeather;
  for (const decision of decisions) {
    const alone = yield* run(withDecision(before.scenario, decision, decision.to), before);
    scenario = withDecision(scenario, decision, decision.to);
    const next = yield* run(scenario, after);
    parts.push({
      decision,
      alone: outcomeDifferences(first, alone),
      inTurn: outcomeDifferences(last, next),
    });
    last = next;
  }
  const whole = outcomeDifferences(first, last);
  const weather = otherWeather ? outcomeDifferences(first, underWeather) : null;
  return {
    parts,
    weather,
    whole,
    together: less(whole, [...(weather ? [weather] : []), ...parts.map(({ alone }) => alone)]),
  };
}

/** Outcomes of which the parts can be told: both seasons, and every one between, have such a thing. */
export const toldOutcomes = ({ whole, parts }: TakenApart) =>
  outcomeKeys.filter((key) => whole[key] !== null && parts.every(({ inTurn }) => inTurn[key] !== null));
