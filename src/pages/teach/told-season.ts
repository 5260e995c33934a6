import { lessonFarm, lessonSeason, lessonSeed } from '../../lessons/lesson-season.ts';
import { runSeason } from '../../model/chain.ts';
import type { Season } from '../../model/season.ts';
import { decodeRun, type SavedRun } from '../../statechart/saved-run.ts';

/** The season that a talk or a handout tells of. */
export interface ToldSeason {
  readonly run: Pick<SavedRun, 'scenario' | 'seed'>;
  readonly season: Season;
  /** The season of the link could not be told: another stands in its place. */
  readonly other: boolean;
}

const isTold = ({ weaving, sewing }: Season): boolean =>
  weaving?.cloth?.description.kind === 'woven' && sewing?.patchInchesPerBoll != null;

/** The season of a link, or the lessons' own where that made no woven cloth, or there is no link. @param query the link's query */
export function toldSeason(query: string): ToldSeason {
  const lesson = { run: { scenario: lessonFarm, seed: lessonSeed }, season: lessonSeason() };
  if (query === '') return { ...lesson, other: false };
  const { scenario, seed } = decodeRun(query).run;
  const season = runSeason(scenario, seed, null);
  return isTold(season) ? { run: { scenario, seed }, season, other: false } : { ...lesson, other: true };
}
