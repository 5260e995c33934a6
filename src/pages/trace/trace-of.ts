import { runSeason } from '../../model/chain.ts';
import type { Problem } from '../../model/problem.ts';
import type { Season } from '../../model/season.ts';
import type { ChainAverages } from '../../model/trace/chain-averages.ts';
import { projectFacts } from '../../model/trace/facts.ts';
import { type Familiar, familiarFor } from '../../model/trace/familiar.ts';
import type { TraceRequest } from '../../model/trace/need.ts';
import { type ProjectId, projectIds } from '../../model/trace/project-facts.ts';
import { seasonAverages, seasonClothOunces, seasonMasses } from '../../model/trace/season-chain.ts';
import { traceInCases } from '../../model/trace/trace-cases.ts';
import { type Forward, traceForward } from '../../model/trace/trace-forward.ts';
import { traceProject } from '../../model/trace/trace-project.ts';
import { type LinkDifference, whyItDiffers } from '../../model/trace/why-it-differs.ts';
import type { TraceAccount } from '../../workings/trace-chain.ts';
import { type OpenedRun, openRun } from '../farm/open-run.ts';
import type { TraceAsked } from './trace-link.ts';

/** Which links of a season the trace cannot use: its crop failed, its yarn or its cloth could not be made. */
export type Missing = 'failed' | 'noYarn' | 'noCloth';

/** The season that is traced through; null for the stated averages. */
export interface Through {
  readonly opened: OpenedRun;
  readonly season: Season;
  readonly missing: Missing | null;
}

/** Opens and runs the season of a link. */
export function throughOf(query: string): Through {
  const opened = openRun(query);
  const { run, weather } = opened;
  const season = runSeason(run.scenario, run.seed, weather?.year ?? null);
  const masses = seasonMasses(season);
  const missing =
    masses === null ? 'failed' : masses.yarnKg === null ? 'noYarn' : masses.clothKg === null ? 'noCloth' : null;
  return { opened, season, missing };
}

/** Everything the page shows, computed: the way back in its cases, the way forward, and why the season differs. */
export interface Traced {
  readonly account: TraceAccount;
  /** The season that is traced through; null for the stated averages, and where no lint was pressed. */
  readonly season: Season | null;
  readonly familiar: Familiar;
  readonly forward: Forward;
  /** Lint of one of each project, kg. */
  readonly pieceLintKg: readonly { readonly project: ProjectId; readonly kg: number }[];
  readonly differences: readonly LinkDifference[];
}

const requestOf = ({ project, count, own }: TraceAsked): TraceRequest => (project === 'own' ? own : { project, count });

/**
 * Follows what was asked through a season, or through the stated averages.
 * @returns the numbers, or the problems of what was asked
 */
export function traceOf(asked: TraceAsked, season: Season | null): Traced | readonly Problem[] {
  const averages: Partial<ChainAverages> = season ? seasonAverages(season) : {};
  const used = Object.keys(averages).length > 0 ? season : null;
  const request = requestOf(asked);
  const cases = traceInCases(request, averages);
  if (!cases.ok) return cases.problems;
  const forward = traceForward(
    {
      start: asked.start,
      count: asked.startCount,
      ouncesPerSquareYard: (used && seasonClothOunces(used)) ?? projectFacts.quiltingOunces.value,
    },
    averages,
  );
  if (!forward.ok) return forward.problems;
  const differences = whyItDiffers(request, averages);
  return {
    season: used,
    account: { request, season: used, averages, cases: cases.value },
    familiar: familiarFor(cases.value.middle.squareMetres),
    forward: forward.value,
    pieceLintKg: projectIds.flatMap((project) => {
      const one = traceProject({ project }, averages);
      return one.ok ? [{ project, kg: one.value.lintKg }] : [];
    }),
    differences: differences.ok ? differences.value : [],
  };
}
