import { climateOf } from '../model/field/climates.ts';
import { pickingFacts, stageFacts } from '../model/field/facts.ts';
import type { Season } from '../model/season.ts';
import { bollsPerPlantWorking } from './bloom.ts';
import { bollMassWorking, yieldWorking } from './planting.ts';
import { day, decided, exact, inField, percent, procedure, read, type StationWorkings, step } from './steps.ts';
import type { ProcedureWorking, Step } from './working.ts';

const rainOn = ({ field }: Season, dayOfYear: number): number =>
  field.days.find((each) => each.dayOfYear === dayOfYear)?.rainInches ?? 0;

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

/**
 * The day the first boll opened: every day ripens it by its share of the heat, but by no more than the fewest days allow; it
 * opens when the shares make a whole.
 */
function openingWorking({ field, scenario }: Season): ProcedureWorking | null {
  const { firstFlower, firstOpenBoll } = field.events;
  if (firstFlower === null || firstOpenBoll === null) return null;
  const { openDd60, openHu8655, openDays } = stageFacts;
  const desert = climateOf(scenario.climate).bollClock === 'hu8655';
  const heat = desert ? openHu8655 : openDd60;
  const shift = field.variety.openHeatShiftDd60;
  const pace = openDd60.value / (openDd60.value + shift);
  const ripeOn = (dayOfYear: number): number =>
    field.days.reduce((sum, each, index) => {
      if (each.dayOfYear <= firstFlower || each.dayOfYear > dayOfYear) return sum;
      const before = field.days[index - 1]?.hu8655SincePlanting ?? 0;
      const today = desert ? each.hu8655SincePlanting - before : each.dd60;
      return sum + pace * Math.min(1 / openDays.value, today / heat.value);
    }, 0);
  return procedure(
    [
      step('stageBefore', day(firstFlower), inField),
      step('heatNeeded', { as: 'heatUnits', value: heat.value }, read(heat)),
      step('fewestDays', exact(openDays.value, 'days'), read(openDays)),
      ...(shift === 0 ? [] : [step('varietyShift', { as: 'heatUnits', value: shift }, { at: 'definition' } as const)]),
      step('ripeDayBefore', percent(100 * ripeOn(firstOpenBoll - 1)), inField),
      step('ripeThatDay', percent(100 * ripeOn(firstOpenBoll)), inField),
      step('daysPassed', exact(firstOpenBoll - firstFlower, 'days'), inField),
    ],
    day(firstOpenBoll),
  );
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
      step('rainThatDay', { as: 'rain', value: rainOn(season, last), decimals: 2 }, { at: 'weather' }),
      ...field.harvestDays.slice(0, -1).map((picked) => step('pickedBefore', day(picked), inField)),
    ],
    day(last),
  );
}

export const bollWorkings: StationWorkings = {
  firstOpenBoll: openingWorking,
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
