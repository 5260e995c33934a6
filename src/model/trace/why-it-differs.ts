import type { Checked } from '../problem.ts';
import { type AverageName, type ChainAverages, statedAverages } from './chain-averages.ts';
import { needOf, type TraceRequest } from './need.ts';
import { traceNeed } from './trace-project.ts';

/** The links between cloth and boll, from the cloth down. */
export const linkNames = [
  'finishingYield',
  'weavingYield',
  'yarnRealisation',
  'battingYield',
  'ginTurnout',
  'deliveredPerGrown',
  'bollGrams',
] as const satisfies readonly AverageName[];

/** What one link does to the count of bolls. */
export interface LinkDifference {
  readonly link: (typeof linkNames)[number];
  readonly stated: number;
  readonly own: number;
  /** Bolls before this link was put to its own value, and after. */
  readonly bollsBefore: number;
  readonly bollsAfter: number;
}

/**
 * Why a season's own chain asks for more or fewer bolls than the stated averages: the links are put to the season's value
 * one after the other, from the cloth down, so that the differences add up to the whole.
 */
export function whyItDiffers(request: TraceRequest, averages: Partial<ChainAverages>): Checked<LinkDifference[]> {
  const need = needOf(request, 'middle');
  if (!need.ok) return need;
  let chain = statedAverages('middle');
  let bolls = traceNeed(need.value, chain).bolls;
  const differences = linkNames.flatMap((link): LinkDifference[] => {
    const own = averages[link];
    if (own === undefined || (link === 'battingYield' && need.value.battingKg === 0)) return [];
    const stated = chain[link];
    const bollsBefore = bolls;
    chain = { ...chain, [link]: own };
    bolls = traceNeed(need.value, chain).bolls;
    return [{ link, stated, own, bollsBefore, bollsAfter: bolls }];
  });
  return { ok: true, value: differences };
}
