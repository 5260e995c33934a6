import { harvestFacts } from '../model/harvest/facts.ts';
import type { HarvestOutcome } from '../model/harvest/harvest.ts';
import { totalDryKg, totalKg, totalWaterKg, trashParts } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { rateSteps } from './ledger-rates.ts';
import {
  above,
  accountWorking,
  atStation,
  constant,
  exact,
  formula,
  input,
  ledgerSteps,
  mass,
  percent,
  procedure,
  type StationWorkings,
  step,
} from './steps.ts';
import type { FormulaWorking, ProcedureWorking } from './working.ts';

const at = atStation('harvest');
const gathered = (working: (harvest: HarvestOutcome, season: Season) => FormulaWorking | ProcedureWorking | null) => {
  return (season: Season) => (season.harvest ? working(season.harvest, season) : null);
};

/** Water over everything on the scale, for a whole lot. */
export const wholeMoisture = (lot: Parameters<typeof totalKg>[0], from: typeof at): ProcedureWorking => {
  const waterKg = totalWaterKg(lot.waterKg);
  return procedure(
    [
      step('dryMatter', mass(totalDryKg(lot.dryKg)), from),
      step({ part: 'water' }, mass(waterKg), from),
      step('together', mass(totalKg(lot)), above),
    ],
    percent((100 * waterKg) / totalKg(lot)),
  );
};

export const harvestWorkings: StationWorkings = {
  seedCotton: gathered(({ ledger, lot }) => procedure(ledgerSteps(ledger), mass(totalKg(lot), 0))),
  foreignMatter: gathered(({ lot }) => {
    const trashKg = trashParts.reduce((sum, part) => sum + lot.dryKg[part], 0);
    return procedure(
      [
        ...trashParts.map((part) => step({ part }, mass(lot.dryKg[part]), at)),
        step('foreignMatter', mass(trashKg), above),
        step('dryMatter', mass(totalDryKg(lot.dryKg)), at),
      ],
      percent((100 * trashKg) / totalDryKg(lot.dryKg)),
    );
  }),
  moisture: gathered(({ lot }) => wholeMoisture(lot, at)),
  leftInField: gathered(({ ledger }, season) =>
    accountWorking(ledger, 'leftInField', 0, rateSteps(season, 'harvest', 'leftInField', 'lint')),
  ),
  weathered: gathered(({ ledger }, season) =>
    accountWorking(ledger, 'weathered', 0, rateSteps(season, 'harvest', 'weathered', 'lint')),
  ),
  personDays: gathered(({ labour, lot }) =>
    labour.personDays === null
      ? null
      : formula(
          'personDays',
          [
            input('S', 'seedCotton', exact(totalKg(lot), 'kilograms'), at),
            constant('h', 'handPace', harvestFacts.handPoundsPerDay, 'poundsPerDay'),
          ],
          exact(labour.personDays, 'personDays'),
          { as: 'count', value: labour.personDays },
        ),
  ),
  machineHours: gathered(({ labour }, { scenario }) => {
    if (labour.machineHours === null) return null;
    const pace =
      scenario.decisions.harvest.method === 'spindle'
        ? harvestFacts.pickerAcresPerHour
        : harvestFacts.stripperAcresPerHour;
    return formula(
      'machineHours',
      [
        input('A', 'acres', exact(scenario.acres, 'acres'), { at: 'farm' }),
        constant('a', 'machinePace', pace, 'acresPerHour'),
      ],
      exact(labour.machineHours, 'hours'),
      { as: 'number', value: labour.machineHours, decimals: 1 },
    );
  }),
};
