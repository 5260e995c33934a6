import { runSeason } from '../model/chain.ts';
import type { WeatherYear } from '../model/field/weather.ts';
import { openStream, type Random } from '../model/random.ts';
import type { Scenario } from '../model/scenario.ts';
import { type Move, withFactsMoved } from './move-facts.ts';
import { type Outcomes, outcomesOf } from './outcomes.ts';
import { sortUnsureFacts, type UncertainFact } from './uncertain-facts.ts';

/** Season numbers that a visitor can pick, 0 to this. */
const highestSeed = 999_999;

export interface SampleInput {
  readonly scenario: Scenario;
  /** The one year of weather when the visitor opened a record; null for a year made anew with each season. */
  readonly record: WeatherYear | null;
  /** The same number gives the same seasons. */
  readonly masterSeed: number;
  readonly count: number;
}

/** Anywhere in the range with the same chance; among whole numbers for what is counted. */
export const drawValue = ({ fact, whole }: UncertainFact, random: Random): number => {
  const [low, high] = fact.range;
  return whole ? random.integer(low, high) : low + random.uniform() * (high - low);
};

/**
 * Seasons of one farm under other weather, other noise of the instruments and other values of all that is unsure, each
 * drawn on its own. Each season has a stream of its own, whose first number is the season's seed, so that a new fact does
 * not change the weather. Stop asking to stop it: between two seasons every fact is at its value.
 */
export function* sampleSeasons({ scenario, record, masterSeed, count }: SampleInput): Generator<Outcomes, void> {
  const { moved } = sortUnsureFacts();
  for (let number = 0; number < count; number++) {
    const random = openStream(masterSeed, 'doubt', number);
    const seed = random.integer(0, highestSeed);
    const moves = moved.map((unsure): Move => ({ fact: unsure.fact, to: drawValue(unsure, random) }));
    yield withFactsMoved(moves, () => outcomesOf(runSeason(scenario, seed, record)));
  }
}
