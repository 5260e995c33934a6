import { daysBefore } from '../model/field/calendar.ts';
import { stageFacts } from '../model/field/facts.ts';
import type { CountName } from '../model/ledger.ts';
import type { Season } from '../model/season.ts';
import { DAYS_PER_YEAR } from '../model/units.ts';
import { bollSteps } from './planting.ts';
import { stageWorking } from './stages.ts';
import {
  above,
  count,
  counted,
  decided,
  exact,
  inField,
  percent,
  procedure,
  type StationWorkings,
  step,
} from './steps.ts';
import type { Origin, ProcedureWorking, Step } from './working.ts';

/** The month of a day of the year, 0 to 11; days past the year's end belong to the next year's months. */
const monthOf = (dayOfYear: number): number => {
  const inYear = ((dayOfYear - 1) % DAYS_PER_YEAR) + 1;
  return daysBefore.filter((before) => before < inYear).length - 1;
};

/** Inches of water by month from planting to the end, and their sum. */
function waterWorking(
  { field }: Season,
  of: 'rainInches' | 'irrigationInches',
  total: number,
  from: Origin,
  first: readonly Step[],
): ProcedureWorking {
  const months = new Map<number, { first: number; inches: number }>();
  for (const each of field.days) {
    const month = months.get(monthOf(each.dayOfYear)) ?? { first: each.dayOfYear, inches: 0 };
    month.inches += each[of];
    months.set(monthOf(each.dayOfYear), month);
  }
  const steps = [...months.values()]
    .filter(({ inches }) => inches > 0)
    .map((month) => step({ monthOf: month.first }, { as: 'rain', value: month.inches, decimals: 2 }, from));
  const days = step('daysGrowing', exact(field.days.length, 'days'), inField);
  return procedure([...first, days, ...steps], { as: 'rain', value: total });
}

/** The share of a count that dropped. */
function droppedWorking({ field }: Season, station: 'bloom' | 'boll', name: CountName): ProcedureWorking | null {
  const ledger = field.counts.find((counts) => counts.station === station);
  const share = ledger?.shares.find((each) => each.name === name);
  if (!ledger || !share || ledger.whole.count === 0) return null;
  return procedure(
    [
      step({ count: ledger.whole.name }, count(ledger.whole.count), counted(station)),
      step({ count: name }, count(share.count), counted(station)),
    ],
    percent((100 * share.count) / ledger.whole.count, 0),
  );
}

/** Bolls picked from the mean plant: what flowered, what was kept, what was open. */
export function bollsPerPlantWorking(season: Season): ProcedureWorking | null {
  const { field } = season;
  if (!field.crop) return null;
  const plants = field.plantsPerAcre * season.scenario.acres;
  const bolls = field.counts.find(({ station }) => station === 'boll');
  const perPlant = (n: number) => exact(n / plants, 'none');
  return procedure(
    [
      ...(bolls
        ? [
            step('plantsInField', count(plants), counted('planting')),
            step('flowersPerPlant', perPlant(bolls.whole.count), counted('boll')),
            ...bolls.shares.map((share) => step({ count: share.name }, perPlant(share.count), counted('boll'))),
          ]
        : []),
      step('openAtPicking', percent(field.crop.openPercentAtHarvest), inField),
      step('pickings', count(field.harvestDays.length), inField),
      ...bollSteps(season).steps.slice(-1),
    ],
    { as: 'number', value: bollSteps(season).bolls / plants, decimals: 1 },
  );
}

export const bloomWorkings: StationWorkings = {
  firstFlower: (season) =>
    stageWorking(season, season.field.events.firstFlower, {
      since: season.field.events.firstSquare,
      heat: stageFacts.flowerDd60,
      shiftDd60: 0,
      days: stageFacts.flowerDays,
    }),
  nodesAboveWhiteFlower: ({ field }) => {
    const shown = field.nodesAboveWhiteFlowerAtFirstFlower;
    const flowering = field.days.find(({ dayOfYear }) => dayOfYear === field.events.firstFlower);
    if (shown === null || !flowering) return null;
    return procedure(
      [
        step('firstFlowerOn', { as: 'day', value: flowering.dayOfYear }, inField),
        step('nodesThatDay', exact(flowering.nodes), inField),
        step('nodeOfFlower', exact(flowering.nodes - (flowering.nodesAboveWhiteFlower ?? 0)), above),
      ],
      { as: 'number', value: flowering.nodesAboveWhiteFlower ?? shown, decimals: 1 },
    );
  },
  rain: (season) =>
    waterWorking(
      season,
      'rainInches',
      season.field.days.reduce((sum, each) => sum + each.rainInches, 0),
      { at: 'weather' },
      [],
    ),
  irrigation: (season) =>
    waterWorking(
      season,
      'irrigationInches',
      season.field.days.reduce((sum, each) => sum + each.irrigationInches, 0),
      inField,
      [step('waterAllowed', { as: 'rain', value: season.scenario.decisions.bloom.irrigationInches }, decided('bloom'))],
    ),
  squaresDropped: (season) => droppedWorking(season, 'bloom', 'squaresShed'),
  bollsDropped: (season) => droppedWorking(season, 'boll', 'bollsShed'),
  bollsPerPlant: bollsPerPlantWorking,
};
