import { farmOf } from '../../model/farms.ts';
import { decodeRun, type SavedRun } from '../../statechart/saved-run.ts';
import type { OpenedWeather } from '../season/season-session.ts';
import { ownFarm, weatherOf } from './shelf.ts';

/** A link opened on this device: its run, and what of it is only where it was made. */
export interface OpenedRun {
  readonly run: SavedRun;
  readonly weather: OpenedWeather | null;
  readonly ignored: readonly string[];
  /** Kept elsewhere: the name and story of a farm of someone's own, a weather record. */
  readonly elsewhere: readonly ('name' | 'weather')[];
}

/** Reads the query of a link, and puts back what this device keeps of it: the name of a farm of one's own, a weather record. */
export function openRun(query: string): OpenedRun {
  const { run, ignored } = decodeRun(query);
  const isOwn = farmOf(run.scenario.id) === undefined;
  const kept = isOwn ? ownFarm(run.scenario.id) : null;
  const weather = run.weather ? weatherOf(run.weather) : null;
  return {
    run: kept ? { ...run, scenario: { ...run.scenario, name: kept.scenario.name, story: kept.scenario.story } } : run,
    weather,
    ignored,
    elsewhere: [
      ...(isOwn && !kept ? (['name'] as const) : []),
      ...(run.weather && !weather ? (['weather'] as const) : []),
    ],
  };
}
