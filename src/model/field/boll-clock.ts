import type { BollClock } from './climate-facts.ts';
import { bollFacts, stageFacts } from './facts.ts';
import type { FieldSeason } from './field-season.ts';
import { seasonHeat } from './season-heat.ts';
import type { Variety } from './varieties.ts';
import type { WeatherYear } from './weather.ts';

/** Days on the boll's clock for each day of a heat of the reference variety: a variety that needs more heat to open is slower. */
export const bollPace = (variety: Pick<Variety, 'openHeatShiftDd60'>): number =>
  stageFacts.openDd60.value / (stageFacts.openDd60.value + variety.openHeatShiftDd60);

/**
 * The age of any boll of a season on its own clock, days: 45 when it opens. It stands still once the boll is open, and gains
 * no more than the facts allow after a harvest aid or a killing frost.
 * @param clock the heat unit by which bolls ripen in the climate
 * @returns of a flower's day and a later day, both days of the year
 */
export function bollAgesOf(
  { variety, plantedDay, days, calendar, events }: FieldSeason,
  weather: WeatherYear,
  clock: BollClock,
): (flowerDay: number, dayOfYear: number) => number {
  const sums = seasonHeat(weather, plantedDay, days.length, clock).bollAge;
  const pace = bollPace(variety);
  const at = (dayOfYear: number) => sums[Math.min(days.length - 1, Math.max(0, dayOfYear - plantedDay))]!;
  const between = (from: number, to: number) => Math.max(0, pace * (at(to) - at(from)));
  return (flowerDay, dayOfYear) => {
    const openDay = calendar.openDay[flowerDay - plantedDay]!;
    if (openDay >= 0 && dayOfYear >= plantedDay + openDay) return calendar.openAge[flowerDay - plantedDay]!;
    const { harvestAid, killingFrost } = events;
    // Whichever came first closed the season: the aid leaves a boll a little filling, a frost none.
    const closed = Math.min(harvestAid ?? Number.POSITIVE_INFINITY, killingFrost ?? Number.POSITIVE_INFINITY);
    const age = between(flowerDay, dayOfYear);
    if (dayOfYear <= closed) return age;
    const gain = closed === harvestAid ? bollFacts.gainAfterAidDays.value : 0;
    return Math.min(age, between(flowerDay, closed) + gain);
  };
}
