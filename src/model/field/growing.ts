import { MM_PER_INCH } from '../units.ts';
import { type Climate, climateOf } from './climates.ts';
import { pickingFacts } from './facts.ts';
import type { FieldPlan } from './field-plan.ts';
import { emptyCalendar, type FruitCalendar, positionCount } from './fruit-calendar.ts';
import { type SeasonHeat, seasonHeat } from './season-heat.ts';
import type { Stages } from './stages.ts';
import { type FruitingPosition, type Variety, varietyOf } from './varieties.ts';
import type { SoilWater } from './water.ts';
import type { WeatherYear } from './weather.ts';

/** A season while it runs. Days are counted from planting, 0 the planting day; -1 is a day that has not come. */
export interface Growing {
  readonly plan: FieldPlan;
  readonly climate: Climate;
  readonly variety: Variety;
  readonly weather: WeatherYear;
  readonly heat: SeasonHeat;
  readonly calendar: FruitCalendar;
  readonly stages: Stages;
  readonly soil: SoilWater;
  /** The last day on which picking is possible. */
  readonly lastDay: number;
  plantsPerAcre: number;
  /** Positions as the stand shapes them, known at emergence. */
  positions: readonly FruitingPosition[];
  heightInches: number;
  /** Lint the kept bolls would make if they lacked nothing, lb/acre. */
  setLintLbPerAcre: number;
  /** The branch cohort that is next to square or flower, by position. */
  readonly nextSquare: Int16Array;
  readonly nextFlower: Int16Array;
  /** The boll cohort that is next to open. */
  nextOpen: number;
  /** Running totals for one plant. */
  readonly totals: {
    squares: number;
    squaresShed: number;
    flowers: number;
    bollsShed: number;
    bollsKept: number;
    bollsOpen: number;
  };
  /** Day of harvest aid or of a killing frost: nothing new after it. */
  closed: number;
  /** Filling that bolls still gain after it, days on their clock. */
  gainAfterClosing: number;
  /** First boll cohort too young to open after it. */
  lostFrom: number;
  aidDay: number;
  frostDay: number;
  killedYoung: boolean;
  readonly pickDays: number[];
  /** Open bolls already picked from one plant. */
  bollsPicked: number;
}

/** A field on its planting day, before anything grew. */
export function plantedField(plan: FieldPlan, weather: WeatherYear): Growing {
  const climate = climateOf(plan.climate);
  const variety = varietyOf(plan.variety, plan.era);
  const lastDay = pickingFacts.lastHarvestDay.value - plan.plantingDayOfYear;
  return {
    plan,
    climate,
    variety,
    weather,
    heat: seasonHeat(weather, plan.plantingDayOfYear, lastDay + 1, climate.bollClock),
    calendar: emptyCalendar(lastDay + 1),
    stages: { emerged: -1, firstSquare: -1, firstFlower: -1, cutOut: -1, firstOpenBoll: -1 },
    soil: {
      capacityMm: plan.soilWaterMm,
      effectiveRainFraction: climate.levers.effectiveRainFraction.value,
      waterMm: plan.soilWaterMm * climate.levers.startingWaterFraction.value,
      irrigationLeftMm: plan.irrigationInches * MM_PER_INCH,
      gddC: 0,
      neededMm: 0,
      usedMm: 0,
      irrigatedMm: 0,
    },
    lastDay,
    plantsPerAcre: 0,
    positions: variety.positions,
    heightInches: 0,
    setLintLbPerAcre: 0,
    nextSquare: new Int16Array(positionCount),
    nextFlower: new Int16Array(positionCount),
    nextOpen: 0,
    totals: { squares: 0, squaresShed: 0, flowers: 0, bollsShed: 0, bollsKept: 0, bollsOpen: 0 },
    closed: -1,
    gainAfterClosing: 0,
    lostFrom: -1,
    aidDay: -1,
    frostDay: -1,
    killedYoung: false,
    pickDays: [],
    bollsPicked: 0,
  };
}

/** Open bolls, percent of the bolls kept. */
export const openPercentOf = ({ totals }: Growing): number =>
  totals.bollsKept > 0 ? (100 * totals.bollsOpen) / totals.bollsKept : 0;
