import type { Checked } from '../problem.ts';
import {
  INCHES_PER_FOOT,
  KG_PER_POUND,
  KILO,
  OUNCES_PER_POUND,
  POUNDS_PER_STATISTICAL_BALE,
  SQUARE_FEET_PER_ACRE,
} from '../units.ts';
import { type ChainAverages, statedAverages } from './chain-averages.ts';
import { countLimits } from './facts.ts';
import { fieldFor, squareSideInches } from './steps-back.ts';

/** What the way forward may begin with. */
export const startIds = ['boll', 'plant', 'rowFoot', 'acre', 'module', 'bale'] as const;
export type StartId = (typeof startIds)[number];

/** What is begun with, and the cloth that is made of it. */
export interface ForwardRequest {
  readonly start: string;
  readonly count: number;
  readonly ouncesPerSquareYard: number;
}

/** Bolls followed forward to cloth. Masses in kg, as traded. */
export interface Forward {
  readonly start: StartId;
  readonly count: number;
  readonly bolls: number;
  readonly plants: number;
  readonly squareMetres: number;
  readonly seedCottonKg: number;
  readonly lintKg: number;
  readonly seedKg: number;
  readonly yarnKg: number;
  readonly clothKg: number;
  readonly ouncesPerSquareYard: number;
  readonly clothSquareYards: number;
  /** Side of all that cloth as one square. */
  readonly squareSideInches: number;
}

/** Seed cotton at the gin from bolls, kg. */
export const seedCottonOfKg = (bolls: number, bollGrams: number, deliveredPerGrown: number): number =>
  ((bolls * bollGrams) / KILO) * deliveredPerGrown;

/** Finished cloth from lint that is all spun and woven, kg. */
export const clothOfKg = (lintKg: number, realisation: number, weavingYield: number, finishingYield: number): number =>
  lintKg * realisation * weavingYield * finishingYield;

/** Square yards of cloth of a weight, oz/yd2, in so many kg. */
export const squareYardsOf = (clothKg: number, ounces: number): number =>
  ((clothKg / KG_PER_POUND) * OUNCES_PER_POUND) / ounces;

/** Bolls in one of what the way forward begins with. */
export function bollsOf(start: StartId, chain: ChainAverages): number {
  const bollsPerAcre = chain.bollsPerPlant * chain.plantsPerAcre;
  const deliveredKg = seedCottonOfKg(1, chain.bollGrams, chain.deliveredPerGrown);
  switch (start) {
    case 'boll':
      return 1;
    case 'plant':
      return chain.bollsPerPlant;
    case 'rowFoot':
      return (bollsPerAcre * chain.rowInches) / INCHES_PER_FOOT / SQUARE_FEET_PER_ACRE;
    case 'acre':
      return bollsPerAcre;
    case 'module':
      return (chain.moduleLb * KG_PER_POUND) / deliveredKg;
    case 'bale':
      return (POUNDS_PER_STATISTICAL_BALE * KG_PER_POUND) / (deliveredKg * chain.ginTurnout);
  }
}

/** Follows bolls forward through a chain: all lint is spun, woven and finished. */
export function forwardFromBolls(bolls: number, ouncesPerSquareYard: number, chain: ChainAverages) {
  const seedCottonKg = seedCottonOfKg(bolls, chain.bollGrams, chain.deliveredPerGrown);
  const lintKg = seedCottonKg * chain.ginTurnout;
  const plants = bolls / chain.bollsPerPlant;
  const clothKg = clothOfKg(lintKg, chain.yarnRealisation, chain.weavingYield, chain.finishingYield);
  const clothSquareYards = squareYardsOf(clothKg, ouncesPerSquareYard);
  return {
    bolls,
    plants,
    squareMetres: fieldFor(plants, chain.plantsPerAcre),
    seedCottonKg,
    lintKg,
    seedKg: lintKg * chain.seedPerLint,
    yarnKg: lintKg * chain.yarnRealisation,
    clothKg,
    ouncesPerSquareYard,
    clothSquareYards,
    squareSideInches: squareSideInches(clothSquareYards),
  };
}

/**
 * Follows bolls, plants, row, acres, modules or bales forward to cloth.
 * @param averages of a chain; what is not named is taken from the stated facts
 * @returns the way forward, or the problems: an unknown beginning, or a number out of its limits
 */
export function traceForward(
  { start, count, ouncesPerSquareYard }: ForwardRequest,
  averages: Partial<ChainAverages> = {},
): Checked<Forward> {
  const known = startIds.find((each) => each === start);
  if (known === undefined) {
    return { ok: false, problems: [{ field: 'from', value: start, rule: { kind: 'choice', options: startIds } }] };
  }
  const { low, high, unit } = countLimits;
  if (!(count >= low && count <= high)) {
    const rule = { kind: 'range', low, high, step: null, unit } as const;
    return { ok: false, problems: [{ field: 'count', value: String(count), rule }] };
  }
  const chain = { ...statedAverages('middle'), ...averages };
  return {
    ok: true,
    value: { start: known, count, ...forwardFromBolls(count * bollsOf(known, chain), ouncesPerSquareYard, chain) },
  };
}
