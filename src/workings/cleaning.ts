import type { CleaningOutcome } from '../model/gin/clean.ts';
import { cleaningFacts } from '../model/gin/facts.ts';
import { groupDryKg, type Lot, totalKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import {
  accountWorking,
  atStation,
  exact,
  formula,
  inLedger,
  input,
  mass,
  percent,
  procedure,
  read,
  type StationWorkings,
  step,
} from './steps.ts';
import type { FormulaWorking, Origin, ProcedureWorking } from './working.ts';

const cleaned = (working: (cleaning: CleaningOutcome, season: Season) => FormulaWorking | ProcedureWorking | null) => {
  return (season: Season) => (season.cleaning ? working(season.cleaning, season) : null);
};

/** Moisture of the lint of a lot, wet basis. */
export const lintMoisture = (
  lot: Pick<Lot, 'dryKg' | 'waterKg'>,
  modelPercent: number,
  from: Origin,
): FormulaWorking => {
  const dryKg = groupDryKg(lot.dryKg, 'lint');
  return formula(
    'moisture',
    [
      input('w', 'waterInLint', exact(lot.waterKg.lint, 'kilograms'), from),
      input('d', 'dryLint', exact(dryKg, 'kilograms'), from),
    ],
    exact(modelPercent, 'percent'),
    percent(modelPercent),
  );
};

export const cleaningWorkings: StationWorkings = {
  trashTaken: cleaned((cleaning, { module }) => {
    if (!module) return null;
    return formula(
      'trashTaken',
      [
        input('F_1', 'foreignIn', exact(groupDryKg(module.lot.dryKg, 'trash'), 'kilograms'), inLedger('cleaning')),
        input('F_2', 'foreignOut', exact(groupDryKg(cleaning.lot.dryKg, 'trash'), 'kilograms'), inLedger('cleaning')),
      ],
      exact(100 * cleaning.trashRemovedFraction, 'percent'),
      percent(100 * cleaning.trashRemovedFraction, 0),
    );
  }),
  lintMoisture: cleaned((cleaning) => lintMoisture(cleaning.lot, cleaning.lintMoisturePercent, atStation('cleaning'))),
  wentRound: cleaned(({ overflow }) => {
    const from: Origin = { at: 'machine', machine: 'distributor' };
    return procedure(
      [
        step('overflowShare', exact(cleaningFacts.overflowShare.value, 'fraction'), read(cleaningFacts.overflowShare)),
        step('distributed', mass(totalKg(overflow.distributed)), from),
        step('separatorTook', mass(totalKg(overflow.removed)), from),
        step('cameBack', mass(totalKg(overflow.returned)), from),
        step('toFeeders', mass(totalKg(overflow.toFeeders)), from),
      ],
      mass(totalKg(overflow.overflow), 0),
    );
  }),
  ginTrash: cleaned(({ machines, ledger }) => {
    const whole = accountWorking(ledger, 'ginTrash', 0);
    const byMachine = machines.flatMap(({ machine, removed }) => {
      const kg = removed.reduce((sum, { account, masses }) => sum + (account === 'ginTrash' ? totalKg(masses) : 0), 0);
      return kg > 0 ? [step({ machine }, mass(kg), atStation('cleaning'))] : [];
    });
    return procedure(byMachine, whole.result);
  }),
};
