import { totalKg } from '../model/lot.ts';
import { colourFacts, heatingFacts, moduleFacts } from '../model/module/facts.ts';
import { settledRiseF } from '../model/module/heating.ts';
import type { ModuleOutcome } from '../model/module/store.ts';
import type { Season } from '../model/season.ts';
import { wholeMoisture } from './harvest.ts';
import {
  atStation,
  constant,
  decided,
  exact,
  formula,
  inLedger,
  input,
  percent,
  procedure,
  read,
  type StationWorkings,
  step,
} from './steps.ts';
import type { FormulaWorking, Printed, ProcedureWorking, Step } from './working.ts';

const at = atStation('module');
const stored = (working: (module: ModuleOutcome, season: Season) => FormulaWorking | ProcedureWorking) => {
  return (season: Season) => (season.module ? working(season.module, season) : null);
};
const degrees = (f: number): Printed => ({ as: 'temperature', value: f });
/** A difference of temperatures has no zero to shift, so it is stated in the model's own degrees. */
const rise = (f: number) => exact(f, 'fahrenheit');

const hottestF = ({ coreTemperatureF }: ModuleOutcome) =>
  coreTemperatureF.reduce((hottest, { f }) => Math.max(hottest, f), Number.NEGATIVE_INFINITY);

/** The probe's days: the first, a few between, and the last. */
function probeSteps({ coreTemperatureF }: ModuleOutcome): Step[] {
  const every = Math.max(1, Math.ceil(coreTemperatureF.length / 6));
  return coreTemperatureF
    .filter((_, index) => index % every === 0 || index === coreTemperatureF.length - 1)
    .map(({ day, f }) => step({ word: 'coreOnDay', n: day }, degrees(f), at));
}

export const moduleWorkings: StationWorkings = {
  modules: stored((module, { scenario, harvest }) =>
    formula(
      'modules',
      [
        input('S', 'seedCotton', exact(harvest ? totalKg(harvest.lot) : 0, 'kilograms'), atStation('harvest')),
        constant('m', 'moduleHolds', moduleFacts[scenario.decisions.module.kind].seedCottonLb, 'pounds'),
      ],
      exact(module.moduleCount),
      { as: 'count', value: module.moduleCount },
    ),
  ),
  moisture: stored(({ lot }) => wholeMoisture(lot, at)),
  hottestCore: stored((module, { scenario }) =>
    procedure(
      [
        step('startCore', degrees(heatingFacts.startF.value), read(heatingFacts.startF)),
        step('storageDays', exact(scenario.decisions.module.storageDays, 'days'), decided('module')),
        step('settledRise', rise(settledRiseF(module.moisturePercent)), read(heatingFacts.riseAtSoundF)),
        step('daysConstant', exact(heatingFacts.daysConstant.value, 'days'), read(heatingFacts.daysConstant)),
        ...probeSteps(module),
      ],
      degrees(hottestF(module)),
    ),
  ),
  storage: stored((module) =>
    procedure(
      [
        step('hottestCore', degrees(hottestF(module)), at),
        step('coreRise', rise(hottestF(module) - heatingFacts.startF.value), at),
        step('ginSoonRise', rise(heatingFacts.ginSoonRiseF.value), read(heatingFacts.ginSoonRiseF)),
        step('ginNowCore', degrees(heatingFacts.ginNowF.value), read(heatingFacts.ginNowF)),
      ],
      { as: 'word', list: 'moduleVerdicts', word: module.verdict },
    ),
  ),
  yellowing: stored((module, { scenario, harvest }) => {
    const before = harvest?.lot.fibre.yellownessB ?? module.lot.fibre.yellownessB;
    return procedure(
      [
        step('storageDays', exact(scenario.decisions.module.storageDays, 'days'), decided('module')),
        step('moistureAfter', percent(module.moisturePercent), inLedger('module')),
        step('yellowsAbove', percent(colourFacts.yellowsAbovePercent.value), read(colourFacts.yellowsAbovePercent)),
        step(
          'yellowPerPointDay',
          exact(colourFacts.yellowingPerPointDay.value),
          read(colourFacts.yellowingPerPointDay),
        ),
        step('yellowBefore', exact(before), { at: 'fibre' }),
        step('yellowAfter', exact(module.lot.fibre.yellownessB), { at: 'fibre' }),
      ],
      percent(100 * (module.lot.fibre.yellownessB / before - 1), 0),
    );
  }),
};
