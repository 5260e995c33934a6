import type { FieldPlan } from '../../../src/model/field/field-plan.ts';
import { type Growing, plantedField } from '../../../src/model/field/growing.ts';
import type { WeatherYear } from '../../../src/model/field/weather.ts';
import { evenYear, ordinary } from './plans.ts';

/** Warm and dry: 20 DD60 every day, so that a boll's clock runs at its ceiling. */
export const warmYear = evenYear(90, 70, 0);

/** A field of 40 000 plants an acre that stands and has squared, in a year of even weather. */
export function standingField(plan: FieldPlan = ordinary.midSouth, weather: WeatherYear = warmYear): Growing {
  const field = plantedField(plan, weather);
  field.plantsPerAcre = 40_000;
  field.stages.emerged = 3;
  field.stages.firstSquare = 30;
  return field;
}

/** Puts flowers of the first position on a day, all or part of them kept. */
export function flowerOn(field: Growing, day: number, flowers: number, kept = 1): void {
  field.calendar.flowers[0]![day] = flowers;
  field.calendar.keptShare[0]![day] = kept;
  field.totals.flowers += flowers;
  field.totals.bollsKept += flowers * kept;
}
