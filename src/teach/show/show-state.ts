import * as v from 'valibot';
import type { ShowStep } from './show-steps.ts';

const whole = v.pipe(v.number(), v.integer(), v.minValue(0));
/** No plan has more stops than the list has. */
const mostStops = 60;
const stateSchema = v.strictObject({
  /** The link's query of the plan that is shown. */
  query: v.string(),
  step: whole,
  blank: v.boolean(),
  /** Time that each stop of the plan has had, ms, but for what runs now. */
  ranMs: v.pipe(v.array(whole), v.maxLength(mostStops)),
  /** Since when the clock runs for the stop that is on, ms since 1970; null while it stands. */
  sinceMs: v.nullable(whole),
  /** When this was last changed, ms since 1970: of two windows the later is right. */
  changedMs: whole,
});

/** Where a show stands. */
export type ShowState = Readonly<v.InferOutput<typeof stateSchema>>;

const messageSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('hello'), query: v.string() }),
  v.strictObject({ kind: v.literal('state'), state: stateSchema }),
]);

/** What two windows say to each other: who else shows this plan, and where the show stands. */
export type ShowMessage = v.InferOutput<typeof messageSchema>;

/** A message of unknown origin, or null: an older page of this app may be open beside. */
export function readMessage(input: unknown): ShowMessage | null {
  const read = v.safeParse(messageSchema, input);
  return read.success ? read.output : null;
}

/** A kept state for this plan; null for junk and for another plan's. */
export function readState(text: string | null, query: string): ShowState | null {
  try {
    const read = v.safeParse(stateSchema, JSON.parse(text ?? ''));
    return read.success && read.output.query === query ? read.output : null;
  } catch {
    return null;
  }
}

/** A show that nobody has turned yet: any other window's state is later. */
export const firstState = (query: string): ShowState => ({
  query,
  step: 0,
  blank: false,
  ranMs: [],
  sinceMs: null,
  changedMs: 0,
});

const placeOf = ({ step }: ShowState, steps: readonly ShowStep[]): number => steps[step]?.place ?? -1;

/** Time that a stop has had so far, ms. */
export function stopMs(state: ShowState, steps: readonly ShowStep[], place: number, nowMs: number): number {
  const runs = state.sinceMs !== null && placeOf(state, steps) === place;
  return (state.ranMs[place] ?? 0) + (runs ? Math.max(0, nowMs - state.sinceMs!) : 0);
}

/** Time that all stops have had so far, ms. */
export function wholeMs(state: ShowState, steps: readonly ShowStep[], nowMs: number): number {
  const ran = state.ranMs.reduce((sum, ms) => sum + ms, 0);
  return ran + (state.sinceMs !== null && placeOf(state, steps) >= 0 ? Math.max(0, nowMs - state.sinceMs) : 0);
}

export type ShowPress = 'next' | 'back' | 'first' | 'last' | 'blank' | 'clock' | 'restart';

/** What runs now, put to its stop. */
function counted(state: ShowState, steps: readonly ShowStep[], nowMs: number): ShowState['ranMs'] {
  const place = placeOf(state, steps);
  if (state.sinceMs === null || place < 0) return state.ranMs;
  const ranMs = Array.from({ length: Math.max(state.ranMs.length, place + 1) }, (_, i) => state.ranMs[i] ?? 0);
  ranMs[place] = stopMs(state, steps, place, nowMs);
  return ranMs;
}

/**
 * The state after a press. The first turn away from the title starts the clock; a turn ends a blank.
 * @param nowMs ms since 1970
 */
export function pressed(state: ShowState, press: ShowPress, steps: readonly ShowStep[], nowMs: number): ShowState {
  const changedMs = Math.max(nowMs, state.changedMs + 1);
  if (press === 'restart') return { ...firstState(state.query), changedMs };
  if (press === 'blank') return { ...state, blank: !state.blank, changedMs };
  const ranMs = counted(state, steps, nowMs);
  if (press === 'clock') return { ...state, ranMs, sinceMs: state.sinceMs === null ? nowMs : null, changedMs };
  const last = Math.max(0, steps.length - 1);
  const wanted = { next: state.step + 1, back: state.step - 1, first: 0, last }[press];
  const step = Math.min(Math.max(0, wanted), last);
  const begins = state.step === 0 && step > 0 && ranMs.every((ms) => ms === 0);
  return { ...state, ranMs, sinceMs: state.sinceMs !== null || begins ? nowMs : null, step, blank: false, changedMs };
}

/** What a key of a keyboard or a clicker presses; undefined for one that means nothing here. */
export const pressOfKey: Readonly<Record<string, ShowPress>> = {
  PageDown: 'next',
  ArrowRight: 'next',
  ArrowDown: 'next',
  ' ': 'next',
  PageUp: 'back',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  b: 'blank',
  B: 'blank',
  '.': 'blank',
  p: 'clock',
  P: 'clock',
  Home: 'first',
  End: 'last',
};
