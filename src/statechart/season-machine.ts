import { assign, enqueueActions, fromCallback, setup } from 'xstate';
import type { Decisions } from '../model/decisions.ts';
import type { Scenario } from '../model/scenario.ts';
import { type StationId, stationIds } from '../model/station.ts';

/** The three speeds, by their names: a day at a time, a week at a time, a whole station at a time. */
export const speeds = ['byDay', 'byWeek', 'byStage'] as const;
export type Speed = (typeof speeds)[number];

/** Why a station cannot be sewn in yet; the words are made from this in the visitor's language. */
export interface Refusal {
  readonly station: StationId;
  readonly reason: 'notEnoughBollsOpen' | 'cropFailed' | 'tooWetToStore' | 'yarnOutOfReach' | 'settTooHigh';
  /** Numbers for the sentence. */
  readonly values: Readonly<Record<string, number>>;
}

/** Looks at a scenario's computed season and says why a station must not be left yet, or null. Pure. */
export type Judge = (scenario: Scenario, seed: number, station: StationId) => Refusal | null;

/** What stood before a choice: all that taking it back must restore. */
export interface ChoiceTaken {
  /** The station and key of the decision: a slider's many small steps are one choice. */
  readonly turned: string;
  readonly scenario: Scenario;
  readonly station: StationId;
  readonly sewn: number;
}

export interface SeasonContext {
  readonly judge: Judge;
  readonly scenario: Scenario;
  readonly seed: number;
  /** Where the visitor is. */
  readonly station: StationId;
  /** How many stations are sewn in; the quilt's count. */
  readonly sewn: number;
  readonly speed: Speed;
  readonly refusal: Refusal | null;
  /** The choices that can be taken back, the last one last. */
  readonly taken: readonly ChoiceTaken[];
}

export type SeasonEvent =
  | { type: 'PLAY' }
  | { type: 'PAUSE' }
  | { type: 'STEP_DAY' }
  | { type: 'STEP_STATION' }
  | { type: 'SPEED'; speed: Speed }
  | { type: 'DECIDE'; station: StationId; key: string; value: number | string | boolean }
  | { type: 'UNDO' }
  | { type: 'SEW_IN' }
  | { type: 'GO_TO'; station: StationId }
  | { type: 'START_OVER' }
  | { type: 'OPEN'; scenario: Scenario; seed: number; station?: StationId; sewn?: number }
  | { type: 'STATION_ENDED' };

/** What the statechart tells the runner. Frames never pass this way, only these. */
export type RunnerCommand =
  | { type: 'run'; speed: Speed }
  | { type: 'hold' }
  | { type: 'stepDay' }
  | { type: 'toEnd' }
  | { type: 'enter'; station: StationId; scenario: Scenario; seed: number };

const indexOf = (station: StationId) => stationIds.indexOf(station);

const decided = (scenario: Scenario, event: Extract<SeasonEvent, { type: 'DECIDE' }>): Scenario => ({
  ...scenario,
  decisions: {
    ...scenario.decisions,
    [event.station]: { ...scenario.decisions[event.station], [event.key]: event.value },
  } as Decisions,
});

/** More than anyone takes back, and few enough to hold. */
const mostTaken = 100;

/** The choices that can be taken back once this one is made. */
function takenWith(context: SeasonContext, event: Extract<SeasonEvent, { type: 'DECIDE' }>): readonly ChoiceTaken[] {
  const { taken, scenario, station, sewn } = context;
  const turned = `${event.station}/${event.key}`;
  const last = taken.at(-1);
  // Nothing was sewn since the control was last turned: still the same choice.
  if (last?.turned === turned && sewn === Math.min(last.sewn, indexOf(event.station))) return taken;
  return [...taken, { turned, scenario, station, sewn }].slice(-mostTaken);
}

/**
 * One season: which station, which decisions, playing or not. It never holds mass; the runner does. Machine snapshots are
 * never stored: what is saved is the scenario and the seed.
 */
export const seasonMachine = setup({
  types: {
    context: {} as SeasonContext,
    events: {} as SeasonEvent,
    input: {} as Pick<SeasonContext, 'judge' | 'scenario' | 'seed'> &
      Partial<Pick<SeasonContext, 'station' | 'sewn' | 'speed'>>,
  },
  actors: { runner: fromCallback<RunnerCommand>(() => {}) },
  guards: {
    mayLeave: ({ context }) => context.judge(context.scenario, context.seed, context.station) === null,
    atLast: ({ context }) => context.station === stationIds.at(-1),
    hasTaken: ({ context }) => context.taken.length > 0,
    byStage: ({ context }) => context.speed === 'byStage',
    reachable: ({ context, event }) =>
      event.type === 'GO_TO' && indexOf(event.station) <= Math.min(context.sewn, stationIds.length - 1),
  },
  actions: {
    run: enqueueActions(({ context, enqueue }) => enqueue.sendTo('runner', { type: 'run', speed: context.speed })),
    hold: enqueueActions(({ enqueue }) => enqueue.sendTo('runner', { type: 'hold' })),
    enterStation: enqueueActions(({ context, enqueue }) =>
      enqueue.sendTo('runner', {
        type: 'enter',
        station: context.station,
        scenario: context.scenario,
        seed: context.seed,
      }),
    ),
    refuse: assign({ refusal: ({ context }) => context.judge(context.scenario, context.seed, context.station) }),
    forgive: assign({ refusal: null }),
    sewIn: assign({
      refusal: null,
      sewn: ({ context }) => Math.max(context.sewn, indexOf(context.station) + 1),
      station: ({ context }) => stationIds[Math.min(indexOf(context.station) + 1, stationIds.length - 1)]!,
    }),
    // Deciding otherwise unpicks the blocks from there on: what follows is computed anew.
    decide: assign(({ context, event }) =>
      event.type === 'DECIDE'
        ? {
            taken: takenWith(context, event),
            scenario: decided(context.scenario, event),
            sewn: Math.min(context.sewn, indexOf(event.station)),
            station: indexOf(event.station) < indexOf(context.station) ? event.station : context.station,
            refusal: null,
          }
        : {},
    ),
    // The quilt comes back with the decisions: its blocks were sewn with them.
    undo: assign(({ context }) => {
      const last = context.taken.at(-1);
      if (!last) return {};
      const { scenario, station, sewn } = last;
      return { scenario, station, sewn, taken: context.taken.slice(0, -1), refusal: null };
    }),
    goTo: assign(({ event }) => (event.type === 'GO_TO' ? { station: event.station, refusal: null } : {})),
    open: assign(({ event }) =>
      event.type === 'OPEN'
        ? {
            scenario: event.scenario,
            seed: event.seed,
            station: event.station ?? 'planting',
            sewn: event.sewn ?? 0,
            refusal: null,
            taken: [],
          }
        : {},
    ),
    startOver: assign({ station: 'planting', sewn: 0, refusal: null }),
    setSpeed: assign(({ event }) => (event.type === 'SPEED' ? { speed: event.speed } : {})),
  },
}).createMachine({
  id: 'season',
  context: ({ input }) => ({
    judge: input.judge,
    scenario: input.scenario,
    seed: input.seed,
    station: input.station ?? 'planting',
    sewn: input.sewn ?? 0,
    speed: input.speed ?? 'byWeek',
    refusal: null,
    taken: [],
  }),
  invoke: { src: 'runner', id: 'runner' },
  initial: 'arriving',
  on: {
    DECIDE: { target: '.resting', actions: ['decide', 'enterStation'] },
    UNDO: { guard: 'hasTaken', target: '.resting', actions: ['undo', 'enterStation'] },
    GO_TO: { guard: 'reachable', target: '.arriving', actions: 'goTo' },
    START_OVER: { target: '.arriving', actions: 'startOver' },
    OPEN: { target: '.arriving', actions: 'open' },
    STEP_DAY: {
      target: '.resting',
      actions: enqueueActions(({ enqueue }) => enqueue.sendTo('runner', { type: 'stepDay' })),
    },
    STEP_STATION: {
      target: '.resting',
      actions: enqueueActions(({ enqueue }) => enqueue.sendTo('runner', { type: 'toEnd' })),
    },
    STATION_ENDED: '.ended',
    SPEED: { actions: 'setSpeed' },
    SEW_IN: [
      { guard: 'mayLeave', target: '.sewing' },
      { target: '.resting', actions: 'refuse' },
    ],
  },
  states: {
    arriving: { entry: ['enterStation'], always: 'playing' },
    playing: {
      entry: 'run',
      exit: 'hold',
      on: {
        PAUSE: 'resting',
        SPEED: { target: 'playing', actions: 'setSpeed', reenter: true },
        STATION_ENDED: [{ guard: 'byStage', target: 'passing' }, { target: 'ended' }],
      },
    },
    resting: { on: { PLAY: { target: 'playing', actions: 'forgive' } } },
    /** The station's time is up; the block waits to be sewn in. */
    ended: { on: { PLAY: [{ guard: 'mayLeave', target: 'sewing' }, { actions: 'refuse' }] } },
    /** At the speed "by stage" the season sews itself on, as far as it is allowed. */
    passing: {
      always: [
        { guard: 'mayLeave', target: 'sewing' },
        { target: 'ended', actions: 'refuse' },
      ],
    },
    sewing: {
      always: [
        { guard: 'atLast', target: 'finished', actions: 'sewIn' },
        { target: 'arriving', actions: 'sewIn' },
      ],
    },
    finished: {},
  },
});
