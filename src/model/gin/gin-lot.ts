import type { DecisionsOf } from '../decisions.ts';
import type { Fibre } from '../fibre.ts';
import { type MassLedger, massEntry } from '../ledger.ts';
import type { Lot } from '../lot.ts';
import { cleanLint, type LintCleanerStage } from './lint-cleaner.ts';
import { mostLintCleaners } from './lint-cleaner-limit.ts';
import { lintCleanerStages } from './machine-facts.ts';
import { type MachineStep, type Masses, removedTo } from './machine-step.ts';
import { lintMoisturePercent, moistenLint } from './moisten.ts';
import { ginAtStand } from './stand.ts';
import { type StandRun, standRun } from './wet-stand.ts';

export type GinningStage = 'stand' | `lintCleaner${LintCleanerStage}`;

export interface GinningOutcome {
  /** Lint behind the last lint cleaner. */
  readonly lot: Lot;
  readonly ledger: MassLedger;
  readonly machines: readonly MachineStep[];
  /** What went to the seed house: seed with its linters, some lint and trash. */
  readonly seedHouse: Masses;
  readonly fibreAfter: readonly { readonly after: GinningStage; readonly fibre: Fibre }[];
  /** Lint moisture in the stand, % wet basis. */
  readonly standMoisturePercent: number;
  /** How the stand took lint of that moisture. */
  readonly standRun: StandRun;
  /** Lint cleaners wanted, and those that were in line: a gin sets no more of a kind than its kind allows. */
  readonly lintCleaners: { readonly wanted: number; readonly inLine: number };
}

const stages = lintCleanerStages.map((_, index) => (index + 1) as LintCleanerStage);
const accounts = ['seedHouse', 'ginTrash', 'lintCleanerWaste'] as const;

/** Parts lint from seed: moisture put back before the stand if wanted, the stand, then the lint cleaners, as many as their kind allows. */
export function ginLot(lot: Lot, decisions: DecisionsOf<'ginning'>): GinningOutcome {
  const { stand, lintCleaner, lintCleaners, moistureAddedPoints } = decisions;
  const machines: MachineStep[] = [];
  const fibreAfter: { after: GinningStage; fibre: Fibre }[] = [];
  let now = lot;
  const run = (step: MachineStep) => {
    machines.push(step);
    now = { ...step.out, fibre: step.fibreAfter };
  };
  if (moistureAddedPoints > 0) run(moistenLint('conditioner', now, lintMoisturePercent(now) + moistureAddedPoints));
  const standMoisturePercent = lintMoisturePercent(now);
  run(ginAtStand(now, stand));
  fibreAfter.push({ after: 'stand', fibre: now.fibre });
  const inLine = Math.min(lintCleaners, mostLintCleaners(lintCleaner));
  for (const stage of stages.slice(0, inLine)) {
    run(cleanLint(now, lintCleaner, stage));
    fibreAfter.push({ after: `lintCleaner${stage}`, fibre: now.fibre });
  }
  return {
    lot: now,
    ledger: {
      station: 'ginning',
      in: [
        massEntry('lot', lot),
        ...machines.flatMap(({ added }) => added.map(({ account, masses }) => massEntry(account, masses))),
      ],
      out: [...accounts.map((account) => massEntry(account, removedTo(machines, account))), massEntry('lot', now)],
    },
    machines,
    seedHouse: removedTo(machines, 'seedHouse'),
    fibreAfter,
    standMoisturePercent,
    standRun: standRun(standMoisturePercent),
    lintCleaners: { wanted: lintCleaners, inLine },
  };
}
