import { runSeason } from '../../model/chain.ts';
import type { Fact } from '../../model/fact.ts';
import { farmOf } from '../../model/farms.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import type { Asked } from '../../workings/work-out.ts';
import type { Printed } from '../../workings/working.ts';
import type { Run } from '../what-made-the-difference.ts';

/** Things that are counted in a sentence; the words give each its plural. */
export type CountedThing = 'bale' | 'season' | 'leafGrade' | 'personDay' | 'market' | 'minute';

/** Two words for the two directions a difference can go, such as more and less. */
export type WayPair = 'amount' | 'grade' | 'move' | 'length';

/** A value in a sentence or a table: the model's number and how it is written, never text in a language. */
export type Amount =
  | Exclude<Printed, { as: 'exact' }>
  | { readonly as: 'counted'; readonly value: number; readonly of: CountedThing; readonly decimals?: number }
  /** A difference between two shares, in per cent points. */
  | { readonly as: 'points'; readonly value: number }
  /** Which way a difference goes, as a word. */
  | { readonly as: 'way'; readonly value: number; readonly pair: WayPair };

/** A number of one season, and how it was come by. */
export interface ShownCell {
  readonly value: Amount;
  readonly asked: Asked;
}

/** One line of the table below an answer: a number for each side, or null where its season has none. */
export interface ShownNumber {
  readonly name: string;
  readonly cells: readonly (ShownCell | null)[];
}

/** What came out, as numbers: which of the prepared sentences holds, and what is filled in. */
export interface Answer {
  readonly verdict: string;
  readonly said: Readonly<Record<string, Amount>>;
  /** The seasons that the table shows side by side: one or two. */
  readonly sides: readonly Season[];
  readonly shown: readonly ShownNumber[];
  /** Two seasons that the visitor can open side by side; null where no decision stands for what is asked. */
  readonly compare: { readonly before: Run; readonly after: Run } | null;
}

/** A number of the model that the answer hangs on. */
export interface DecidingFact {
  readonly name: string;
  readonly fact: Fact;
}

/** A prepared comparison. */
export interface Question {
  readonly id: string;
  readonly runs: readonly Run[];
  /** Reads the answer off the seasons, which stand in the order of the runs. */
  readonly answer: (seasons: readonly Season[]) => Answer;
  readonly decidedBy: readonly DecidingFact[];
  /** Where in the season the matter is decided. */
  readonly station: StationId;
}

export const runAsked = ({ scenario, seed, record }: Run): Season => runSeason(scenario, seed, record ?? null);

/** Runs all that a question asks, and answers it. */
export function answerQuestion(question: Question): { readonly seasons: readonly Season[]; readonly answer: Answer } {
  const seasons = question.runs.map(runAsked);
  return { seasons, answer: question.answer(seasons) };
}

/** A farm that is known to be there. */
export function farmNamed(id: string): Scenario {
  const farm = farmOf(id);
  if (!farm) throw new RangeError(`no farm ${id}`);
  return farm;
}
