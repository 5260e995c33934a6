import { oilMillFacts } from '../gin/facts.ts';
import { moduleFacts } from '../module/facts.ts';
import { chainFacts } from './facts.ts';

/** Which end of every stated range is taken: the one that asks less of the field, the stated value, or the one that asks more. */
export const traceCases = ['low', 'middle', 'high'] as const;
export type TraceCase = (typeof traceCases)[number];

/** The fact behind each average of the chain. */
export const averageFacts = {
  ...chainFacts,
  oilPerSeed: oilMillFacts.oil,
  mealPerSeed: oilMillFacts.meal,
  hullsPerSeed: oilMillFacts.hulls,
  lintersPerSeed: oilMillFacts.linters,
  moduleLb: moduleFacts.round.seedCottonLb,
} as const;
export type AverageName = keyof typeof averageFacts;
/** The averages of a chain from field to cloth; each has a default in the facts. */
export type ChainAverages = { readonly [Name in AverageName]: number };

/** Averages of which more means more of something on the way back; of all others more means less. */
const moreMeansMore: ReadonlySet<AverageName> = new Set([
  'seedPerLint',
  'ginWastePerLint',
  'oilPerSeed',
  'mealPerSeed',
  'hullsPerSeed',
  'lintersPerSeed',
  'yarnNe',
  'rainInches',
  'irrigationInches',
  'moduleLb',
]);

/** A number of a range in one of the three cases. @param moreMeans what a larger number does to what is asked of the field */
export function atCase(
  { value, range }: { readonly value: number; readonly range?: readonly [number, number] | undefined },
  at: TraceCase,
  moreMeans: 'more' | 'less' = 'more',
): number {
  if (at === 'middle' || !range) return value;
  return (at === 'high') === (moreMeans === 'more') ? range[1] : range[0];
}

/** The stated averages in one of the three cases. */
export const statedAverages = (at: TraceCase): ChainAverages =>
  Object.fromEntries(
    (Object.keys(averageFacts) as AverageName[]).map((name) => [
      name,
      atCase(averageFacts[name], at, moreMeansMore.has(name) ? 'more' : 'less'),
    ]),
  ) as ChainAverages;
