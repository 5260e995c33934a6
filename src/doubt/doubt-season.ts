import {
  type Change,
  type OneAtATimeInput,
  oneAtATime,
  plainSeason,
  rankChanges,
  type Swing,
} from './one-at-a-time.ts';
import { type OutcomeName, type Outcomes, outcomeNames } from './outcomes.ts';
import { sampleSeasons } from './sample-seasons.ts';
import { type Summary, summarise } from './summarise.ts';
import { type HeldFact, sortUnsureFacts } from './uncertain-facts.ts';

export interface DoubtInput extends OneAtATimeInput {
  /** How many seasons are drawn. */
  readonly count: number;
}

/** How far the work has come. */
export interface DoubtProgress {
  /** 0 to 1. */
  readonly share: number;
}

/** What there is to doubt in a season. */
export interface DoubtResult {
  /** The season itself, nothing moved. */
  readonly base: Outcomes;
  readonly seasons: number;
  /** Seasons that came to no bale. */
  readonly failed: number;
  /** Null where no season had such a thing. */
  readonly summaries: Readonly<Record<OutcomeName, Summary | null>>;
  /** For each outcome, what moves it most, one fact at a time; the greatest first. */
  readonly ranked: Readonly<Record<OutcomeName, readonly Change[]>>;
  /** Facts drawn anew for every season. */
  readonly moved: number;
  /** Facts that this season reads and that were moved one at a time. */
  readonly movedSingly: number;
  readonly held: readonly HeldFact[];
  /** Tables of unsure numbers, which have no range to move in. */
  readonly heldTables: number;
}

const recordOf = <Value>(read: (name: OutcomeName) => Value): Record<OutcomeName, Value> =>
  Object.fromEntries(outcomeNames.map((name) => [name, read(name)])) as Record<OutcomeName, Value>;

/**
 * Draws many seasons around one, and moves what is unsure in it one at a time. The season's own seed is the master seed:
 * the same season gives the same result to the last digit.
 * @param listed how many of the ranked changes are told for each outcome
 */
export function* doubtSeason(input: DoubtInput, listed: number): Generator<DoubtProgress, DoubtResult> {
  const { scenario, record, seed, count } = input;
  const drawn: Outcomes[] = [];
  const { base, read } = plainSeason(input);
  // A swing takes two seasons.
  const all = count + 2 * read.length;
  for (const outcomes of sampleSeasons({ scenario, record, masterSeed: seed, count })) {
    drawn.push(outcomes);
    yield { share: drawn.length / all };
  }
  const swings: Swing[] = [];
  for (const swing of oneAtATime(input, read)) {
    swings.push(swing);
    yield { share: (count + 2 * swings.length) / all };
  }
  const { moved, held, heldTables } = sortUnsureFacts();
  return {
    base,
    seasons: drawn.length,
    failed: drawn.filter(({ staple32nds }) => staple32nds === null).length,
    summaries: recordOf((name) => summarise(drawn.flatMap((outcomes) => outcomes[name] ?? []))),
    ranked: recordOf((name) => rankChanges(base, swings, name).slice(0, listed)),
    moved: moved.length,
    movedSingly: read.length,
    held,
    heldTables,
  };
}
