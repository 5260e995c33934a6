import type { Fact } from '../model/fact.ts';
import type { Season } from '../model/season.ts';
import { day, exact, inField, procedure, read, step } from './steps.ts';
import type { ProcedureWorking } from './working.ts';

/** What a stage of the plant waits for. */
export interface StageNeed {
  /** The stage before it; planting where null. */
  readonly since: number | null;
  readonly heat: Fact;
  /** How much more heat this variety needs, DD60. */
  readonly shiftDd60: number;
  readonly days: Fact | null;
}

/** DD60 from planting to a day of the year, by the field's own record. */
function heatAt({ field }: Season, dayOfYear: number): number {
  return field.days.find((each) => each.dayOfYear === dayOfYear)?.dd60SincePlanting ?? 0;
}

/** The day on which a stage came: the heat and the days it waited for, and what the field had by then. */
export function stageWorking(season: Season, reached: number | null, need: StageNeed): ProcedureWorking | null {
  if (reached === null) return null;
  const { plantedDay } = season.field;
  const from = need.since ?? plantedDay;
  const heatBefore = need.since === null ? 0 : heatAt(season, need.since);
  return procedure(
    [
      step(need.since === null ? 'plantedOn' : 'stageBefore', day(from), inField),
      step('heatNeeded', { as: 'heatUnits', value: need.heat.value }, read(need.heat)),
      ...(need.shiftDd60 === 0
        ? []
        : [step('varietyShift', { as: 'heatUnits', value: need.shiftDd60 }, { at: 'definition' })]),
      ...(need.days ? [step('daysNeeded', exact(need.days.value, 'days'), read(need.days))] : []),
      step('heatDayBefore', { as: 'heatUnits', value: heatAt(season, reached - 1) - heatBefore }, inField),
      step('heatThatDay', { as: 'heatUnits', value: heatAt(season, reached) - heatBefore }, inField),
      step('daysPassed', exact(reached - from, 'days'), inField),
    ],
    day(reached),
  );
}
