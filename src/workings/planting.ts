import { stageFacts } from '../model/field/facts.ts';
import { emergenceFraction } from '../model/field/stand.ts';
import { lintFromBolls } from '../model/field/yield-estimate.ts';
import type { Season } from '../model/season.ts';
import { stageWorking } from './stages.ts';
import { atStation, decided, exact, formula, input, procedure, read, type StationWorkings, step } from './steps.ts';
import type { FormulaWorking, ProcedureWorking, Step } from './working.ts';

/** Lint an acre: the bolls counted times what hangs in them. */
export function yieldWorking({ field }: Season): FormulaWorking | null {
  if (!field.crop) return null;
  const { plantsPerAcre, bollsPerPlant, lintGramsPerBoll, crop } = field;
  return formula(
    'lintYield',
    [
      input('P', 'plantsPerAcre', exact(plantsPerAcre, 'plantsPerAcre'), atStation('planting')),
      input('b', 'bollsPicked', exact(bollsPerPlant, 'bolls'), atStation('boll')),
      input('g', 'lintPerBoll', exact(lintGramsPerBoll, 'grams'), atStation('boll')),
    ],
    exact(lintFromBolls(plantsPerAcre, bollsPerPlant, lintGramsPerBoll), 'poundsPerAcre'),
    { as: 'fieldYield', value: crop.lintLbPerAcre },
  );
}

/** Bolls picked in the whole field, with the steps that lead there. */
export function bollSteps({ field, scenario }: Season): { readonly bolls: number; readonly steps: readonly Step[] } {
  const bolls = field.bollsPerPlant * field.plantsPerAcre * scenario.acres;
  return {
    bolls,
    steps: [
      step('bollsPicked', exact(field.bollsPerPlant, 'bolls'), atStation('boll')),
      step('plantsPerAcre', exact(field.plantsPerAcre, 'plantsPerAcre'), atStation('planting')),
      step('acres', exact(scenario.acres, 'acres'), { at: 'farm' }),
      step('bollsInField', exact(bolls, 'bolls'), { at: 'above' }),
    ],
  };
}

/** Air-dry grams in a boll of what the field grew: lint alone, or lint and seed. */
export function bollMassWorking(season: Season, groups: readonly ('lint' | 'seed')[], decimals: number) {
  const { crop } = season.field;
  if (!crop) return null;
  const { bolls, steps } = bollSteps(season);
  const { dryKg, waterKg } = crop.grown;
  const grown = groups.map((group) => ({ group, kg: dryKg[group] + waterKg[group] }));
  const kg = grown.reduce((sum, each) => sum + each.kg, 0);
  return procedure(
    [
      ...grown.map((each) => step({ part: each.group }, { as: 'mass', value: each.kg }, { at: 'field' })),
      ...steps,
      step('gramsPerBoll', exact((kg * 1000) / bolls, 'grams'), { at: 'above' }),
    ],
    { as: 'smallMass', value: (kg * 1000) / bolls, decimals },
  );
}

function standWorking({ field, scenario }: Season): FormulaWorking | ProcedureWorking {
  const { emerged } = field.events;
  const { rowInches, seedsPerFoot } = scenario.decisions.planting;
  const share = emerged === null ? 0 : emergenceFraction(emerged - field.plantedDay);
  return formula(
    'stand',
    [
      input('r', 'rowWidth', exact(rowInches, 'inches'), decided('planting')),
      input('s', 'seedsPerFoot', exact(seedsPerFoot, 'seedsPerFoot'), decided('planting')),
      input('e', 'shareUp', exact(share, 'fraction'), read(stageFacts.emergenceFraction)),
    ],
    exact(field.plantsPerAcre, 'plantsPerAcre'),
    { as: 'count', value: field.plantsPerAcre },
  );
}

export const plantingWorkings: StationWorkings = {
  stand: standWorking,
  emerged: (season) =>
    stageWorking(season, season.field.events.emerged, {
      since: null,
      heat: stageFacts.emergenceDd60,
      shiftDd60: 0,
      days: null,
    }),
  firstSquare: (season) =>
    stageWorking(season, season.field.events.firstSquare, {
      since: season.field.events.emerged,
      heat: stageFacts.squareDd60,
      shiftDd60: season.field.variety.squareHeatShiftDd60,
      days: stageFacts.squareDays,
    }),
  bollWeight: (season) => bollMassWorking(season, ['lint', 'seed'], 1),
  yield: yieldWorking,
};
