import { runSeason } from '../model/chain.ts';
import { farmOf } from '../model/farms.ts';
import type { Season } from '../model/season.ts';
import { ginnedAs } from './own-gin.ts';
import type { KioskSettings, OwnGin } from './settings.ts';

const hourMs = 3_600_000;
const daysOfYear = 365;
/** A year that brought no cloth is passed over; so many are tried before the farm's first is taken. */
const mostTried = 5;

/** A season to show, and the words of the site's own gin where it stands under them. */
export interface ShownSeason {
  readonly season: Season;
  readonly greeting: OwnGin['greeting'] | null;
}

/** Hours since a fixed midnight by the clock on the wall. */
const hourOf = (date: Date): number => Math.floor((date.getTime() - date.getTimezoneOffset() * 60_000) / hourMs);

/** The scenario of an hour: the farms of the pool by turns, and the site's own gin among them. */
export function scenarioOfHour({ scenarios, ownGin }: KioskSettings, date: Date) {
  const pool: readonly (string | null)[] = ownGin ? [null, ...scenarios] : scenarios;
  const turn = pool[hourOf(date) % pool.length];
  if (ownGin && turn === null) return { scenario: ginnedAs(ownGin), greeting: ownGin.greeting };
  return { scenario: farmOf(turn ?? '') ?? farmOf(scenarios[0] ?? '')!, greeting: null };
}

let last: { readonly key: string; readonly shown: ShownSeason } | null = null;

/** The season of an hour: every day brings another year of weather, and only years that end in cloth are shown. */
export function seasonOfHour(settings: KioskSettings, date: Date): ShownSeason {
  const { scenario, greeting } = scenarioOfHour(settings, date);
  const day = Math.floor(hourOf(date) / 24) % daysOfYear;
  const key = JSON.stringify([scenario, day]);
  if (last?.key === key) return last.shown;
  let season = runSeason(scenario, 1 + day, null);
  for (let tried = 1; tried < mostTried && !season.sewing?.patchInchesPerBoll; tried++)
    season = runSeason(scenario, 1 + day + tried * daysOfYear, null);
  if (!season.sewing?.patchInchesPerBoll) season = runSeason(scenario, 1, null);
  last = { key, shown: { season, greeting } };
  return last.shown;
}
