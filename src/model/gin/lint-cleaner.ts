import type { Fibre } from '../fibre.ts';
import { breakByLength } from '../length/breakage.ts';
import { machineBreakagePerMm, moistureFactor } from '../length/facts.ts';
import type { LengthDistribution } from '../length/length-distribution.ts';
import { type Removal, removeByLength, solveRemoval } from '../length/removal.ts';
import { type Lot, type PartMasses, splitLot, trashParts } from '../lot.ts';
import { cleaningFacts } from './facts.ts';
import {
  gridBarWaste,
  type LintCleanerKind,
  lintCleanerKinds,
  lintCleanerStages,
  lintCleanerTrash,
  wasteByLength,
} from './machine-facts.ts';
import type { MachineStep } from './machine-step.ts';
import { lintMoisturePercent } from './moisten.ts';
import { cleaningMoistureFactor } from './removal-factors.ts';

/** Place in the line of lint cleaners: 1, 2 or 3. */
export type LintCleanerStage = 1 | 2 | 3;

/** Share of the lint that a lint cleaner throws out, 0 to 1. */
export const lintLostFraction = (kind: LintCleanerKind, stage: LintCleanerStage): number =>
  (lintCleanerKinds[kind].lintLost ?? lintCleanerStages[stage - 1]!.lintLost).value;

/** Removal fractions of a lint cleaner in its place, for the moisture of the lint. */
export function lintCleanerRemoval(
  kind: LintCleanerKind,
  stage: LintCleanerStage,
  moisturePercent: number,
): Partial<PartMasses> {
  const { trashFactor } = lintCleanerStages[stage - 1]!;
  const factor = lintCleanerKinds[kind].cleaningFactor.value * trashFactor.value;
  const trashShare = factor * cleaningMoistureFactor(moisturePercent);
  const removed: Partial<Record<keyof PartMasses, number>> = {
    lint: lintLostFraction(kind, stage),
    seed: lintCleanerTrash.removedFraction.seed * factor,
  };
  for (const part of trashParts)
    removed[part] = Math.min(cleaningFacts.mostRemoved.value, lintCleanerTrash.removedFraction[part] * trashShare);
  return removed;
}

/** How much likelier a fibre of a length is to be thrown out, before scaling to the lint lost. */
const wasteChance = (lengthMm: number): number =>
  wasteByLength.floor.value + Math.exp(-lengthMm / wasteByLength.scaleMm.value);

/** What a lint cleaner's waste takes out of the lint: short fibres before long ones, so much that the wanted share goes. */
export function removeWasteFibre(lengths: LengthDistribution, lostFraction: number): Removal {
  const chance = (lengthMm: number, scale: number) => scale * wasteChance(lengthMm);
  const scale = solveRemoval(lengths, chance, lostFraction, [0, 1 / wasteByLength.floor.value]);
  return removeByLength(lengths, (lengthMm) => chance(lengthMm, scale));
}

const breakage: Record<LintCleanerKind, number> = {
  saw: machineBreakagePerMm.sawLintCleaner.value,
  roller: machineBreakagePerMm.rollerLintCleaner.value,
  air: 0,
};

/** The fibre behind a lint cleaner: broken first, then relieved of what went to the waste. Air changes nothing measurable.
 * The lint itself does not change colour: cleaned lint reads brighter because less trash darkens it. */
export function lintCleanedFibre(
  fibre: Fibre,
  kind: LintCleanerKind,
  stage: LintCleanerStage,
  moisturePercent: number,
): Fibre {
  const { nepsFactor } = lintCleanerKinds[kind];
  const broken = breakByLength(fibre.lengths, breakage[kind] * moistureFactor(moisturePercent) * fibre.breakTendency);
  return {
    ...fibre,
    lengths: kind === 'air' ? broken : removeWasteFibre(broken, lintLostFraction(kind, stage)).kept,
    nepsRatio: fibre.nepsRatio * nepsFactor.value,
  };
}

/** One lint cleaner as a step. How many of a kind stand in line is the gin's business. */
export function cleanLint(lot: Lot, kind: LintCleanerKind, stage: LintCleanerStage): MachineStep {
  const moisture = lintMoisturePercent(lot);
  const { kept, removed } = splitLot(lot, lintCleanerRemoval(kind, stage, moisture));
  return {
    machine: `lintCleaner${stage}`,
    in: { dryKg: lot.dryKg, waterKg: lot.waterKg },
    added: [],
    removed: [{ account: 'lintCleanerWaste', masses: removed }],
    out: kept,
    fibreBefore: lot.fibre,
    fibreAfter: lintCleanedFibre(lot.fibre, kind, stage, moisture),
  };
}

/** Waste of one saw lint cleaner by the number of its grid bars, lb for a 500-lb bale; later bars take more lint than trash. */
export const wasteByGridBarsLb = (bars: number): number =>
  gridBarWaste.limitLb.value * -Math.expm1(-gridBarWaste.perBar.value * bars);
