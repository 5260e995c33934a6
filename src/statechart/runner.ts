import type { Scenario } from '../model/scenario.ts';
import type { StationId } from '../model/station.ts';
import type { RunnerCommand, Speed } from './season-machine.ts';

/** The clock is passed in, so that tests run time by hand. */
export interface Clock {
  /** Milliseconds, rising. */
  now(): number;
  /** Calls back once, soon; returns a handle. */
  request(callback: () => void): number;
  cancel(handle: number): void;
}

/** Where the season stands: a whole number of steps into a station, of so many. */
export interface Moment {
  readonly station: StationId;
  /** Steps done, 0 to `steps`. A step is a day in the field, a small share of the work elsewhere. */
  readonly step: number;
  readonly steps: number;
}

export interface RunnerOptions {
  readonly clock: Clock;
  /** How many steps a station takes, from the computed season. */
  readonly stepsOf: (scenario: Scenario, seed: number, station: StationId) => number;
  readonly onEnd: () => void;
}

/** Days a second in the field; by stage means the whole station in about a second. */
const daysPerSecond = (speed: Speed, steps: number): number =>
  speed === 'byDay' ? 3 : speed === 'byWeek' ? 15 : Math.max(15, steps);
/** Seconds that a station of machines takes, however many its steps: long enough to see each of them fill. */
const workSeconds: Readonly<Record<Speed, number>> = { byDay: 30, byWeek: 10, byStage: 1.5 };
const fieldStations: readonly StationId[] = ['planting', 'bloom', 'boll'];

const stepsPerSecond = (speed: Speed, { station, steps }: Moment): number =>
  fieldStations.includes(station) ? daysPerSecond(speed, steps) : steps / workSeconds[speed];

/** A frame may make up at most this much time: a closed lid must not fast-forward the season. */
const longestFrameMs = 250;

/**
 * The fixed-step loop. It turns real time into whole steps and holds where the season stands; the scene reads `current()`
 * each frame, panels subscribe. It knows nothing of xstate beyond its five commands.
 */
export function createRunner({ clock, stepsOf, onEnd }: RunnerOptions) {
  let moment: Moment = { station: 'planting', step: 0, steps: 1 };
  let speed: Speed | null = null;
  let last = 0;
  let owed = 0;
  let handle: number | null = null;
  const listeners = new Set<() => void>();

  const tell = () => {
    for (const listener of listeners) listener();
  };
  const moveTo = (step: number) => {
    const next = Math.min(moment.steps, Math.max(0, step));
    if (next === moment.step) return;
    moment = { ...moment, step: next };
    tell();
  };
  const stop = () => {
    if (handle !== null) clock.cancel(handle);
    handle = null;
    speed = null;
  };
  const frame = () => {
    handle = null;
    if (speed === null) return;
    const now = clock.now();
    owed += (Math.min(longestFrameMs, now - last) / 1000) * stepsPerSecond(speed, moment);
    last = now;
    const whole = Math.floor(owed);
    owed -= whole;
    moveTo(moment.step + whole);
    if (moment.step >= moment.steps) {
      stop();
      onEnd();
    } else handle = clock.request(frame);
  };

  return {
    current: (): Moment => moment,
    /** Calls back after every step; returns the way to stop listening. */
    subscribe(listener: () => void): () => void {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    /** Moves within the station, as a hand on the ribbon does. */
    seek: moveTo,
    command(command: RunnerCommand): void {
      switch (command.type) {
        case 'enter': {
          const steps = stepsOf(command.scenario, command.seed, command.station);
          // Deciding again at the same station keeps the day, so that the effect is seen where it was made.
          const step = command.station === moment.station ? Math.min(moment.step, steps) : 0;
          moment = { station: command.station, step: step === moment.steps ? steps : step, steps };
          tell();
          break;
        }
        case 'run':
          speed = command.speed;
          last = clock.now();
          owed = 0;
          if (moment.step >= moment.steps) moveTo(0);
          if (handle === null) handle = clock.request(frame);
          break;
        case 'hold':
          stop();
          break;
        case 'stepDay':
          stop();
          moveTo(moment.step + 1);
          break;
        case 'toEnd':
          stop();
          moveTo(moment.steps);
          break;
      }
    },
    stop,
  };
}
