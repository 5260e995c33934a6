import { pickingFacts, stageFacts } from '../model/field/facts.ts';
import type { Season } from '../model/season.ts';
import { bollsPerPlantWorking } from './bloom.ts';
import { bollMassWorking, yieldWorking } from './planting.ts';
import { stageWorking } from './stages.ts';
import { day, decided, exact, inField, percent, procedure, read, type StationWorkings, step } from './steps.ts';
import type { ProcedureWorking, Step } from './working.ts';

/** Bolls open on the field's days around the picking: what the pickers waited for. */
function openSteps({ field, scenario }: Season): Step[] {
  const { openPercent, harvestAid } = scenario.decisions.boll;
  const aid = field.days.find(({ dayOfYear }) => dayOfYear === field.events.harvestAid);
  const readied = harvestAid && aid;
  return [
    ...(readied
      ? [
          step('aidWanted', percent(openPercent, 0), decided('boll')),
          step('aidGiven', day(aid.dayOfYear), inField),
          step('openAtAid', percent(aid.openPercent), inField),
        ]
      : []),
    ...(field.events.killingFrost === null ? [] : [step('frost', day(field.events.killingFrost), inField)]),
  ];
}

function harvestDayWorking(season: Season): ProcedureWorking | null {
  const { field, scenario } = season;
  const last = field.harvestDays.at(-1);
  if (last === undefined) return null;
  return procedure(
    [
      ...openSteps(season),
      step('daysToHarvest', exact(scenario.decisions.harvest.daysToHarvest, 'days'), decided('harvest')),
      step(
        'dryEnough',
        { as: 'rain', value: pickingFacts.dryDayInches.value, decimals: 2 },
        read(pickingFacts.dryDayInches),
      ),
      ...field.harvestDays.slice(0, -1).map((picked) => step('pickedBefore', day(picked), inField)),
    ],
    day(last),
  );
}

export const bollWorkings: StationWorkings = {
  firstOpenBoll: (season) =>
    stageWorking(season, season.field.events.firstOpenBoll, {
      since: season.field.events.firstFlower,
      heat: stageFacts.openDd60,
      shiftDd60: season.field.variety.openHeatShiftDd60,
      days: null,
    }),
  harvestDay: harvestDayWorking,
  openAtHarvest: (season) => {
    const { field } = season;
    const picked = field.days.find(({ dayOfYear }) => dayOfYear === field.harvestDays[0]);
    if (!field.crop || !picked) return null;
    return procedure(
      [
        ...openSteps(season),
        step('pickedOn', day(picked.dayOfYear), inField),
        step('greenBolls', exact(picked.perPlant.greenBolls), inField),
        step('openBolls', exact(picked.perPlant.openBolls), inField),
      ],
      percent(picked.openPercent, 0),
    );
  },
  bollsPerPlant: bollsPerPlantWorking,
  lintPerBoll: (season) => bollMassWorking(season, ['lint'], 2),
  rainOnOpenBolls: ({ field }) => {
    if (!field.crop) return null;
    const { daysOpenMean, weatheredFraction, rainAfterOpeningInches } = field.crop;
    return procedure(
      [
        step('daysOpen', exact(daysOpenMean, 'days'), inField),
        step('lostToRain', percent(100 * weatheredFraction, 2), inField),
        step('rainMeanOverLint', { as: 'rain', value: rainAfterOpeningInches, decimals: 3 }, inField),
      ],
      { as: 'rain', value: rainAfterOpeningInches },
    );
  },
  yield: yieldWorking,
};
