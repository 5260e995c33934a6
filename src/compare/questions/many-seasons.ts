import type { Season } from '../../model/season.ts';
import { type OutcomeKey, seasonOutcomes } from '../../model/season-outcomes.ts';
import type { Run } from '../what-made-the-difference.ts';

/** Season numbers that a question about the weather is asked for: the first few. Eight show a spread and run at once. */
export const fewSeeds: readonly number[] = [1, 2, 3, 4, 5, 6, 7, 8];

/** Two runs for each season number, one after the other. */
export const pairedRuns = (pair: (seed: number) => readonly [Run, Run], seeds = fewSeeds): Run[] =>
  seeds.flatMap((seed) => [...pair(seed)]);

/** Some values in a few numbers. */
export interface Spread {
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  readonly count: number;
  /** How many lie above nought. */
  readonly above: number;
}

/** @throws RangeError where there is no value */
export function spreadOf(values: readonly number[]): Spread {
  if (values.length === 0) throw new RangeError('a spread of nothing');
  return {
    mean: values.reduce((sum, value) => sum + value, 0) / values.length,
    least: Math.min(...values),
    most: Math.max(...values),
    count: values.length,
    above: values.filter((value) => value > 0).length,
  };
}

/** What the second of each pair of seasons has over the first, over all pairs that both have such a thing. */
export function pairedDifference(seasons: readonly Season[], key: OutcomeKey): Spread {
  const values: number[] = [];
  for (let i = 0; i + 1 < seasons.length; i += 2) {
    const before = seasonOutcomes(seasons[i]!)[key];
    const after = seasonOutcomes(seasons[i + 1]!)[key];
    if (before !== null && after !== null) values.push(after - before);
  }
  return spreadOf(values);
}

/** Whether something held in every season, in none, or in some. */
export const howOften = ({ above, count }: Spread): 'always' | 'never' | 'sometimes' =>
  above === count ? 'always' : above === 0 ? 'never' : 'sometimes';
