import { checkScenario, type Scenario } from '../../model/scenario.ts';
import { weatherKey } from '../../statechart/weather-key.ts';
import type { OpenedWeather } from '../season/season-session.ts';
import { keepWeather, readKeptWeather } from './kept-weather.ts';

/** A farm of the visitor's own, and the real weather that goes with it. */
export interface OwnFarm {
  readonly scenario: Scenario;
  readonly weather: OpenedWeather | null;
  /** Id of the one of the six that it began as. */
  readonly base: string;
}

/** Whether the device keeps the farms, or only this visit does: storage may be shut or full. */
export type Keeping = 'device' | 'visit';

const place = 'seamfield.farms.1';

/** Farms of this visit, the newest first; what the device keeps comes in with the first look. */
let farms: readonly OwnFarm[] | null = null;
/** Every weather record opened in this visit, by its key. */
const records = new Map<string, OpenedWeather>();

/** Puts a record where a link that names it finds it, for this visit. */
export function rememberWeather(weather: OpenedWeather): void {
  records.set(weatherKey(weather.year), weather);
}

/** The record of a key, if this device has it. */
export function weatherOf(key: string): OpenedWeather | null {
  ownFarms();
  return records.get(key) ?? null;
}

/** What the device holds: the farms, and beside them whatever cannot be read, which is written back as it was. */
function readDevice(): { readonly farms: readonly OwnFarm[]; readonly unread: readonly unknown[] } {
  let text: string | null = null;
  let kept: unknown;
  try {
    text = localStorage.getItem(place);
    kept = JSON.parse(text ?? '[]');
  } catch {
    kept = text;
  }
  const unread: unknown[] = [];
  const read = (Array.isArray(kept) ? kept : [kept]).flatMap((each: unknown): OwnFarm[] => {
    const { scenario, weather, base } = (each ?? {}) as Readonly<Record<string, unknown>>;
    const checked = checkScenario(scenario);
    if (checked.ok) return [{ scenario: checked.value, weather: readKeptWeather(weather), base: String(base) }];
    if (each !== null) unread.push(each);
    return [];
  });
  return { farms: read, unread };
}

/** The visitor's own farms, the one changed last first. */
export function ownFarms(): readonly OwnFarm[] {
  if (!farms) {
    farms = readDevice().farms;
    for (const { weather } of farms) if (weather) rememberWeather(weather);
  }
  return farms;
}

/** Whether the device holds something that cannot be read. */
export const holdsUnread = (): boolean => readDevice().unread.length > 0;

export const ownFarm = (id: string): OwnFarm | null => ownFarms().find(({ scenario }) => scenario.id === id) ?? null;

function write(next: readonly OwnFarm[]): Keeping {
  farms = next;
  const kept = next.map(({ scenario, weather, base }) => ({
    scenario,
    base,
    weather: weather && keepWeather(weather),
  }));
  try {
    localStorage.setItem(place, JSON.stringify([...kept, ...readDevice().unread]));
    return 'device';
  } catch {
    return 'visit';
  }
}

/** Farms as they stand now: another tab may have kept one since. */
function merged(): OwnFarm[] {
  const here = ownFarms();
  const ids = new Set(here.map(({ scenario }) => scenario.id));
  return [...here, ...readDevice().farms.filter(({ scenario }) => !ids.has(scenario.id))];
}

/** Keeps a farm in place of the one with the same id. */
export function keepFarm(farm: OwnFarm): Keeping {
  if (farm.weather) rememberWeather(farm.weather);
  return write([farm, ...merged().filter(({ scenario }) => scenario.id !== farm.scenario.id)]);
}

/** Takes a farm off the shelf. */
export const dropFarm = (id: string): Keeping => write(merged().filter(({ scenario }) => scenario.id !== id));

/** Looks at the device again, as a new visit does. */
export function lookAgain(): void {
  farms = null;
  records.clear();
}
