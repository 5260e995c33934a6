import { summariseGin } from '../model/gin/byproducts.ts';
import type { GinningOutcome } from '../model/gin/gin-lot.ts';
import { totalKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { kilogramsFromPounds, poundsFromKilograms } from '../model/units.ts';
import { lintMoisture } from './cleaning.ts';
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
  type StationWorkings,
  step,
} from './steps.ts';
import type { FormulaWorking, ProcedureWorking } from './working.ts';

const ginned = (working: (ginning: GinningOutcome, season: Season) => FormulaWorking | ProcedureWorking | null) => {
  return (season: Season) => (season.ginning ? working(season.ginning, season) : null);
};

/** Seed cotton that came to the gin and lint that was pressed, lb. */
function ginInputs({ module, pressing }: Season) {
  return {
    seedCotton: input(
      'S',
      'seedCottonToGin',
      exact(poundsFromKilograms(module ? totalKg(module.lot) : 0), 'pounds'),
      inLedger('cleaning'),
    ),
    pressed: input(
      'L',
      'lintPressed',
      exact(poundsFromKilograms(pressing ? totalKg(pressing.lot) : 0), 'pounds'),
      inLedger('pressing'),
    ),
  };
}

const summary = ({ cleaning, ginning, pressing }: Season) =>
  cleaning && ginning && pressing ? summariseGin(cleaning.ledger, ginning.ledger, pressing.ledger) : null;

export const ginningWorkings: StationWorkings = {
  turnout: ginned((_, season) => {
    const gin = summary(season);
    if (!gin) return null;
    const { seedCotton, pressed } = ginInputs(season);
    return formula('turnout', [pressed, seedCotton], exact(100 * gin.turnout, 'percent'), percent(100 * gin.turnout));
  }),
  seedCottonPerBale: ginned((_, season) => {
    const gin = summary(season);
    if (!gin) return null;
    const { seedCotton, pressed } = ginInputs(season);
    const pounds = gin.seedCottonLbPer480LbBale;
    const result = mass(kilogramsFromPounds(pounds), 0);
    return formula('seedCottonPerBale', [seedCotton, pressed], exact(pounds, 'pounds'), result);
  }),
  seedPerBale: ginned(({ seedHouse }, season) => {
    const gin = summary(season);
    if (!gin) return null;
    const seed = exact(poundsFromKilograms(totalKg(seedHouse)), 'pounds');
    const pounds = gin.seedLbPer480LbBale;
    return formula(
      'seedPerBale',
      [input('Z', 'seedToHouse', seed, inLedger('ginning')), ginInputs(season).pressed],
      exact(pounds, 'pounds'),
      mass(kilogramsFromPounds(pounds), 0),
    );
  }),
  lintMoisture: ginned(({ machines, standMoisturePercent }) => {
    const stand = machines.find(({ machine }) => machine === 'sawStand' || machine === 'rollerStand');
    return stand ? lintMoisture(stand.in, standMoisturePercent, { at: 'machine', machine: stand.machine }) : null;
  }),
  lintCleanerWaste: ginned(({ ledger, machines }) => {
    const byMachine = machines.flatMap(({ machine, removed }) => {
      const kg = removed.reduce(
        (sum, { account, masses }) => sum + (account === 'lintCleanerWaste' ? totalKg(masses) : 0),
        0,
      );
      return kg > 0 ? [step({ machine }, mass(kg), atStation('ginning'))] : [];
    });
    return accountWorking(ledger, 'lintCleanerWaste', 0, byMachine);
  }),
  lintLost: ginned(({ machines }) => {
    const taken = machines.flatMap(({ machine, removed }) => {
      const kg = removed.reduce(
        (sum, { account, masses }) => sum + (account === 'lintCleanerWaste' ? masses.dryKg.lint : 0),
        0,
      );
      return kg > 0 ? [{ machine, kg }] : [];
    });
    const steps = taken.map(({ machine, kg }) => step({ machine }, mass(kg), atStation('ginning')));
    const none = step('lintCleanersInLine', exact(taken.length), atStation('ginning'));
    return procedure(
      [none, ...steps],
      mass(
        taken.reduce((sum, { kg }) => sum + kg, 0),
        0,
      ),
    );
  }),
};
