import { runSeason } from '../../../model/chain.ts';
import type { Season } from '../../../model/season.ts';
import { decodeRun } from '../../../statechart/saved-run.ts';

let kept: { readonly query: string; readonly season: Season } | null = null;

/** The season of a plan, run once for all steps of a show. @param query the link's query of the season */
export function seasonOfPlan(query: string): Season {
  if (kept?.query !== query) {
    const { scenario, seed } = decodeRun(query).run;
    kept = { query, season: runSeason(scenario, seed, null) };
  }
  return kept.season;
}
