import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createActor } from 'xstate';
import {
  countdownSeconds,
  guidedStops,
  type KioskEvent,
  kioskMachine,
  longestHoldMs,
  quietMs,
  turnedVolume,
  volumeSteps,
} from '../../src/statechart/kiosk.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function kiosk(languages: string[] = ['en', 'es'], volume = 50) {
  const actor = createActor(kioskMachine, { input: { languages, volume } }).start();
  return {
    send: (...events: KioskEvent[]) => {
      for (const event of events) actor.send(event);
    },
    is: (path: string) => {
      const steps = path.split('.');
      let value: unknown = actor.getSnapshot().value;
      for (const step of steps) {
        if (typeof value === 'string') return value === step && steps.at(-1) === step;
        value = (value as Record<string, unknown>)[step];
        if (value === undefined) return false;
      }
      return true;
    },
    at: () => JSON.stringify(actor.getSnapshot().value),
    context: () => actor.getSnapshot().context,
    state: () => [actor.getSnapshot().value, actor.getSnapshot().context] as const,
  };
}
const es: KioskEvent = { type: 'LANGUAGE', language: 'es' };
const next: KioskEvent = { type: 'NEXT' };
const begin: KioskEvent = { type: 'BEGIN' };
const place = ({ at }: ReturnType<typeof kiosk>) => (JSON.parse(at()) as { visit: { place: unknown } }).visit.place;
const watch = ({ at }: ReturnType<typeof kiosk>) => (JSON.parse(at()) as { visit: { watch: unknown } }).visit.watch;

/** A visit that has been everywhere and changed everything. */
const everywhere: KioskEvent[] = [
  begin,
  es,
  { type: 'GUESS', guess: 'lint' },
  ...Array.from({ length: guidedStops }, () => next),
  { type: 'EXPLORE' },
  { type: 'STATION', station: 'weaving' },
  { type: 'COMPARE' },
  { type: 'SIDE', side: 1 },
  { type: 'VOLUME', by: 1 },
];

describe('the way of a visit', () => {
  test('attract, language, six stops, keepsake, explore; Back leads all the way home', () => {
    const visit = kiosk();
    visit.send(begin);
    expect(place(visit)).toBe('language');
    visit.send(es);
    expect(visit.context().language).toBe('es');
    const stops = Array.from({ length: guidedStops }, () => {
      expect(place(visit)).toBe('guided');
      const { stop } = visit.context();
      visit.send(next);
      return stop;
    });
    expect(stops).toEqual([0, 1, 2, 3, 4, 5]);
    expect(place(visit)).toBe('keepsake');
    visit.send({ type: 'EXPLORE' }, { type: 'STATION', station: 'ginning' }, { type: 'LESSON' });
    expect(place(visit)).toEqual({ explore: 'lesson' });
    for (let presses = 0; visit.at() !== '"attract"'; presses++) {
      expect(presses).toBeLessThan(12);
      visit.send({ type: 'BACK' });
    }
  });
  test('where one language is offered nobody is asked for it', () => {
    const visit = kiosk(['es']);
    visit.send(begin);
    expect(place(visit)).toBe('guided');
    expect(visit.context().language).toBe('es');
    visit.send({ type: 'LANGUAGE', language: 'en' });
    expect(visit.context().language).toBe('es');
    visit.send({ type: 'BACK' });
    expect(visit.at()).toBe('"attract"');
  });
  test('the language changes on every screen and nothing else does', () => {
    const visit = kiosk();
    visit.send(...everywhere);
    const [value, context] = visit.state();
    visit.send({ type: 'LANGUAGE', language: 'en' });
    expect(visit.state()).toEqual([value, { ...context, language: 'en' }]);
    visit.send({ type: 'LANGUAGE', language: 'fr' });
    expect(visit.context().language).toBe('en');
  });
  test('another station lays on its first choice', () => {
    const visit = kiosk();
    visit.send(...everywhere);
    expect(visit.context()).toMatchObject({ station: 'weaving', side: 1 });
    visit.send({ type: 'STATION', station: 'sewing' });
    expect(visit.context()).toMatchObject({ station: 'sewing', side: 0 });
    expect(place(visit)).toEqual({ explore: 'looking' });
  });
});

describe('the watch', () => {
  test('is off in attract', () => {
    const visit = kiosk();
    vi.advanceTimersByTime(100 * quietMs);
    expect(visit.at()).toBe('"attract"');
  });
  test('asks after a minute, counts down twenty seconds and forgets everything', () => {
    const visit = kiosk();
    const before = visit.state();
    visit.send(...everywhere);
    vi.advanceTimersByTime(quietMs - 1);
    expect(watch(visit)).toBe('alert');
    vi.advanceTimersByTime(1);
    expect(watch(visit)).toEqual({ warned: 'counting' });
    expect(visit.context().left).toBe(countdownSeconds);
    vi.advanceTimersByTime(1000);
    expect(visit.context().left).toBe(countdownSeconds - 1);
    vi.advanceTimersByTime(1000 * countdownSeconds - 1001);
    expect(watch(visit)).toEqual({ warned: 'counting' });
    vi.advanceTimersByTime(1);
    expect(visit.state()).toEqual(before);
  });
  test('Home forgets everything at once', () => {
    const visit = kiosk();
    const before = visit.state();
    visit.send(...everywhere, { type: 'HOME' });
    expect(visit.state()).toEqual(before);
  });
  test('any touch or key brings back the very same state, as often as one likes', () => {
    const visit = kiosk();
    visit.send(...everywhere);
    const there = place(visit);
    const context = visit.context();
    for (let time = 0; time < 25; time++) {
      vi.advanceTimersByTime(quietMs + 7000);
      expect(watch(visit)).toEqual({ warned: 'counting' });
      if (time % 2) visit.send({ type: 'KEY' });
      else {
        visit.send({ type: 'DOWN' });
        expect(watch(visit)).toBe('rescued');
        vi.advanceTimersByTime(30_000);
        visit.send({ type: 'UP' });
      }
      expect(watch(visit)).toBe('alert');
      expect(place(visit)).toEqual(there);
      expect({ ...visit.context(), left: context.left }).toEqual(context);
    }
  });
  test('waits while a finger is down and while something is read aloud, and no longer than a finger can lie', () => {
    const visit = kiosk();
    visit.send(begin, { type: 'DOWN' });
    vi.advanceTimersByTime(5 * quietMs);
    expect(watch(visit)).toBe('held');
    visit.send({ type: 'UP' }, { type: 'SPEAK' });
    vi.advanceTimersByTime(5 * quietMs);
    expect(watch(visit)).toBe('listening');
    visit.send({ type: 'SPOKEN' }, { type: 'DOWN' });
    vi.advanceTimersByTime(longestHoldMs + quietMs);
    expect(watch(visit)).toEqual({ warned: 'counting' });
  });
  test('every touch and key starts the minute anew', () => {
    const visit = kiosk();
    visit.send(begin);
    for (let time = 0; time < 10; time++) {
      vi.advanceTimersByTime(quietMs - 1);
      visit.send(...(time % 2 ? [{ type: 'KEY' } as const] : [{ type: 'DOWN' } as const, { type: 'UP' } as const]));
    }
    expect(watch(visit)).toBe('alert');
  });
});

// EN 301 549 V3.2.1, 8.2.1: a gain of at least 18 dB, with a step at 12 dB.
test('loudness spans 18 dB with a step at 12 dB, turns by steps and holds at its ends', () => {
  const [, quietest, middle, , loudest] = volumeSteps;
  const decibel = (from: number, to: number) => 20 * Math.log10(to / from);
  expect(decibel(quietest, loudest)).toBeGreaterThanOrEqual(18);
  expect(decibel(quietest, loudest)).toBeLessThan(18.1);
  expect(decibel(middle, loudest)).toBeCloseTo(12, 1);
  expect(turnedVolume(50, 1)).toBe(100);
  expect(turnedVolume(60, -1)).toBe(50);
  expect(turnedVolume(100, 1)).toBe(100);
  expect(turnedVolume(0, -1)).toBe(0);
});
