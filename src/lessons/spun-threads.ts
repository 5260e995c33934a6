import { meanLengthMm, shortFibrePercent } from '../model/length/statistics.ts';
import { totalDryKg } from '../model/lot.ts';
import { type SpinningSystem, spinningSystems } from '../model/mill/facts.ts';
import { spin } from '../model/mill/spin.ts';
import type { Yarn } from '../model/mill/yarn.ts';
import { KG_PER_POUND } from '../model/units.ts';
import { lessonFarm, lessonSeason } from './lesson-season.ts';

/** A thread spun in one of the three ways from the bales of the example season. */
export interface SpunThread {
  readonly system: SpinningSystem;
  /** Null where the count is too fine for this way of spinning. */
  readonly yarn: Yarn | null;
  /** Finest count this cotton can be spun to this way, Ne. */
  readonly ceilingNe: number;
  /** Finest count that runs without strain, Ne. */
  readonly comfortableNe: number;
  /** Dry thread for dry lint bought, percent; null where nothing was spun. */
  readonly threadPercent: number | null;
  /** Thread from a pound of lint as it was bought, km. */
  readonly kilometresPerPound: number | null;
}

const noilPercent = lessonFarm.decisions.spinning.noilPercent;

function baled() {
  const lot = lessonSeason().pressing?.lot;
  if (!lot) throw new Error('this season made no bales');
  return lot;
}

/**
 * Spins the example bales one way.
 * @throws Error when the example season made no bales
 */
export function spunThread(system: SpinningSystem, countNe: number): SpunThread {
  const lot = baled();
  const { yarn, verdict, yarnRealisation, yarnKilometres } = spin(lot, { system, countNe, noilPercent });
  const { lint, seed, trash } = lot.waterKg;
  const pounds = (totalDryKg(lot.dryKg) + lint + seed + trash) / KG_PER_POUND;
  return {
    system,
    yarn,
    ceilingNe: verdict.ceilingNe,
    comfortableNe: verdict.comfortableNe,
    threadPercent: yarnRealisation === null ? null : yarnRealisation * 100,
    kilometresPerPound: yarn ? yarnKilometres / pounds : null,
  };
}

/** The three ways side by side at one count. */
export const spunThreads = (countNe: number): readonly SpunThread[] =>
  spinningSystems.map((system) => spunThread(system, countNe));

/** What the comber does to the fibres of the example bales. */
export interface Combing {
  /** Of a hundred fibres fed, how many leave as noil, and how much of the weight. */
  readonly fibresTakenPercent: number;
  readonly weightTakenPercent: number;
  /** Of a hundred fibres, how many are under half an inch, before and after. */
  readonly shortBeforePercent: number;
  readonly shortAfterPercent: number;
  readonly meanBeforeMm: number;
  readonly meanAfterMm: number;
}

export function combing(): Combing {
  const { fibreAfter } = spin(baled(), {
    system: 'ringCombed',
    countNe: lessonFarm.decisions.spinning.countNe,
    noilPercent,
  });
  const [before, after] = fibreAfter.map(({ fibre }) => fibre.lengths);
  if (!before || !after) throw new Error('this season’s cotton was not combed');
  const meanBeforeMm = meanLengthMm(before, 'number');
  const meanAfterMm = meanLengthMm(after, 'number');
  // So much weight of shorter fibre is more fibres: kept weight over mean length, against all of it.
  const keptShare = ((1 - noilPercent / 100) / meanAfterMm) * meanBeforeMm;
  return {
    fibresTakenPercent: 100 * (1 - keptShare),
    weightTakenPercent: noilPercent,
    shortBeforePercent: shortFibrePercent(before, 'number'),
    shortAfterPercent: shortFibrePercent(after, 'number'),
    meanBeforeMm,
    meanAfterMm,
  };
}
