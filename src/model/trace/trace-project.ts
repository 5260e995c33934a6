import type { Checked } from '../problem.ts';
import { asNe, texFromNe } from '../units.ts';
import { type ChainAverages, statedAverages, type TraceCase } from './chain-averages.ts';
import { type Need, needOf, type TraceRequest } from './need.ts';
import {
  alongLintKg,
  baleShareOf,
  bollsFor,
  fibresIn,
  fieldFor,
  handPickingDaysFor,
  lintForKg,
  machineMinutesFor,
  rowFeetOn,
  seedCottonForKg,
  waterOnLitres,
  yarnForClothKg,
  yarnKilometres,
} from './steps-back.ts';

/** One project followed back to the field. Masses in kg, as traded (with their usual moisture). */
export interface Trace extends Need {
  /** Yarn in the cloth; batting is not spun. */
  readonly yarnKg: number;
  readonly yarnKilometres: number;
  /** Baled lint for cloth and batting. */
  readonly lintKg: number;
  /** Of a bale of 480 lb. */
  readonly baleShare: number;
  /** As it comes to the gin. */
  readonly seedCottonKg: number;
  readonly bolls: number;
  readonly plants: number;
  /** Field that the plants stand on. */
  readonly squareMetres: number;
  /** Row that they make, feet. */
  readonly rowFeet: number;
  readonly rainLitres: number;
  readonly irrigationLitres: number;
  readonly seedKg: number;
  readonly oilKg: number;
  readonly mealKg: number;
  readonly hullsKg: number;
  readonly lintersKg: number;
  readonly ginWasteKg: number;
  readonly handPickingDays: number;
  readonly machinePickingMinutes: number;
  /** Fibres in the lint, one by one. */
  readonly fibres: number;
}

/**
 * Follows a project back: cloth, yarn, lint, seed cotton, bolls, plants, field, and what came along.
 * @param request a project's name and how many, or yards (0.125 to 10,000), width (10 to 130 in) and weight (0.5 to 40 oz/yd2)
 * @param averages of a chain, for example a season's own; what is not named is taken from the stated facts
 * @param at which end of the ranges of all that is stated and not given
 * @returns the trace, or the problems: unknown project, or a number out of its limits
 */
export function traceProject(
  request: TraceRequest,
  averages: Partial<ChainAverages> = {},
  at: TraceCase = 'middle',
): Checked<Trace> {
  const need = needOf(request, at);
  return need.ok ? { ok: true, value: traceNeed(need.value, { ...statedAverages(at), ...averages }) } : need;
}

/** Follows cloth and batting back through a chain. */
export function traceNeed(need: Need, chain: ChainAverages): Trace {
  const yarnKg = yarnForClothKg(need.clothKg, chain.finishingYield, chain.weavingYield);
  const lintKg = lintForKg(yarnKg, chain.yarnRealisation, need.battingKg, chain.battingYield);
  const seedCottonKg = seedCottonForKg(lintKg, chain.ginTurnout);
  const bolls = bollsFor(seedCottonKg, chain.deliveredPerGrown, chain.bollGrams);
  const plants = bolls / chain.bollsPerPlant;
  const squareMetres = fieldFor(plants, chain.plantsPerAcre);
  const seedKg = alongLintKg(lintKg, chain.seedPerLint);
  return {
    ...need,
    yarnKg,
    yarnKilometres: yarnKilometres(yarnKg, texFromNe(asNe(chain.yarnNe))),
    lintKg,
    baleShare: baleShareOf(lintKg),
    seedCottonKg,
    bolls,
    plants,
    squareMetres,
    rowFeet: rowFeetOn(squareMetres, chain.rowInches),
    rainLitres: waterOnLitres(squareMetres, chain.rainInches),
    irrigationLitres: waterOnLitres(squareMetres, chain.irrigationInches),
    seedKg,
    oilKg: seedKg * chain.oilPerSeed,
    mealKg: seedKg * chain.mealPerSeed,
    hullsKg: seedKg * chain.hullsPerSeed,
    lintersKg: seedKg * chain.lintersPerSeed,
    ginWasteKg: alongLintKg(lintKg, chain.ginWastePerLint),
    handPickingDays: handPickingDaysFor(seedCottonKg, chain.handPickPoundsPerDay),
    machinePickingMinutes: machineMinutesFor(squareMetres, chain.machineAcresPerHour),
    fibres: fibresIn(lintKg, chain.fibreMtex, chain.fibreLengthMm),
  };
}
