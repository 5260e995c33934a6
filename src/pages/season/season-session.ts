import { createActor, fromCallback } from 'xstate';
import { runSeason } from '../../model/chain.ts';
import type { WeatherYear } from '../../model/field/weather.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { Season } from '../../model/season.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { stationSpan } from '../../model/timeline.ts';
import { judgeSeason } from '../../statechart/judge-season.ts';
import { createRunner } from '../../statechart/runner.ts';
import type { SavedRun } from '../../statechart/saved-run.ts';
import { type RunnerCommand, seasonMachine } from '../../statechart/season-machine.ts';
import { weatherKey } from '../../statechart/weather-key.ts';
import { rememberWeather } from '../farm/shelf.ts';
import { pageClock } from './page-clock.ts';

/** Seasons kept at hand: enough to step back and forth between a few choices without computing again. */
const seasonsKept = 12;

/** Real weather the visitor opened, and its file's name. */
export interface OpenedWeather {
  readonly name: string;
  readonly year: WeatherYear;
  readonly notes: readonly string[];
}

/**
 * One visit's season: the statechart, its runner, and the computed season of the decisions in force.
 * @param station where the visitor wants to be; the stations before it are passed as far as the season allows
 * @param sewnBefore blocks sewn when the page was last shown, 0 to 12
 * @param opened real weather that this device has for the run
 */
export function openSession(run: SavedRun, station: StationId, sewnBefore = 0, opened: OpenedWeather | null = null) {
  let weather = opened;
  const kept = new Map<string, Season>();

  const seasonOf = (scenario: Scenario, seed: number): Season => {
    const key = JSON.stringify([scenario, seed]);
    const known = kept.get(key);
    if (known) return known;
    const season = runSeason(scenario, seed, weather?.year ?? null);
    kept.set(key, season);
    if (kept.size > seasonsKept) kept.delete(kept.keys().next().value!);
    return season;
  };

  const runner = createRunner({
    clock: pageClock(),
    stepsOf: (scenario, seed, id) => stationSpan(seasonOf(scenario, seed), id).steps,
    onEnd: () => actor.send({ type: 'STATION_ENDED' }),
  });
  const machine = seasonMachine.provide({
    actors: {
      runner: fromCallback<RunnerCommand>(({ receive }) => {
        receive((command) => runner.command(command as RunnerCommand));
        return runner.stop;
      }),
    },
  });
  const actor = createActor(machine, {
    input: {
      judge: (scenario, seed, id) => judgeSeason(seasonOf(scenario, seed), id),
      scenario: run.scenario,
      seed: run.seed,
    },
  });
  actor.subscribe({ error: (error) => reportError(error) });
  actor.start();

  /** A link to a later station passes the ones before it, as far as the season allows. */
  const goTowards = (id: StationId) => {
    for (let passed = 0; passed < stationIds.length; passed++) {
      const { context } = actor.getSnapshot();
      if (context.refusal || stationIds.indexOf(id) <= context.sewn) break;
      actor.send({ type: 'GO_TO', station: stationIds[context.sewn]! });
      actor.send({ type: 'SEW_IN' });
    }
    actor.send({ type: 'GO_TO', station: id });
  };
  if (sewnBefore > 0) goTowards(stationIds[Math.min(sewnBefore, stationIds.length - 1)]!);
  goTowards(station);

  return {
    actor,
    runner,
    seasonOf,
    goTowards,
    weather: () => weather,
    /** What a link holds of a season here: the weather under it is named, not held. */
    runOf: (scenario: Scenario, seed: number): SavedRun =>
      weather ? { scenario, seed, weather: weatherKey(weather.year) } : { scenario, seed },
    /** Puts real weather under the season, or the generated year back with null, and starts over. */
    setWeather(chosen: OpenedWeather | null) {
      weather = chosen;
      if (chosen) rememberWeather(chosen);
      kept.clear();
      actor.send({ type: 'START_OVER' });
    },
    close() {
      actor.stop();
      runner.stop();
    },
  };
}
export type Session = ReturnType<typeof openSession>;
