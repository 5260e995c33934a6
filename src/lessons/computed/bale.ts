import { lessonSeason } from '../lesson-season.ts';
import { type TaggedBale, taggedBales } from '../tagged-bale.ts';
import type { Computed } from './computed.ts';

let known: readonly TaggedBale[] | null = null;
function bales(): readonly TaggedBale[] {
  known ??= taggedBales(lessonSeason());
  return known;
}
/** Mean over the season's bales. */
const mean = (of: (bale: TaggedBale) => number): number =>
  bales().reduce((sum, bale) => sum + of(bale), 0) / bales().length;

/** Cloth of all bales of the season, yd, shared out among them. */
function yardsPerBale(): number {
  const cloth = lessonSeason().weaving?.cloth;
  if (!cloth) throw new Error('this season made no cloth');
  return cloth.runningYards / bales().length;
}

export const baleQuantities = {
  'bale-gross': { as: 'mass', value: () => mean(({ grossKg }) => grossKg), decimals: 0 },
  'bale-net': { as: 'mass', value: () => mean(({ netKg }) => netKg), decimals: 0 },
  'bale-tare': { as: 'mass', value: () => mean(({ tareKg }) => tareKg), decimals: 0 },
  'bales-of-season': { as: 'plain', value: () => bales().length, decimals: 0 },
  'modules-of-season': { as: 'plain', value: () => bales()[0]!.modules, decimals: 0 },
  'bolls-per-bale': { as: 'plain', value: () => Math.round(mean(({ bolls }) => bolls) / 1000) * 1000 },
  'cloth-per-bale': { as: 'clothLength', value: () => Math.round(yardsPerBale() / 10) * 10, decimals: 0 },
} as const satisfies Readonly<Record<string, Computed>>;
