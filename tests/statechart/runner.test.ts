import { expect, test, vi } from 'vitest';
import { farms } from '../../src/model/farms.ts';
import { type Clock, createRunner } from '../../src/statechart/runner.ts';

/** A clock run by hand: each tick calls what was asked for. */
function handClock() {
  let now = 0;
  let waiting: (() => void) | null = null;
  const clock: Clock = {
    now: () => now,
    request: (callback) => {
      waiting = callback;
      return 1;
    },
    cancel: () => {
      waiting = null;
    },
  };
  const tick = (ms: number) => {
    now += ms;
    const callback = waiting;
    waiting = null;
    callback?.();
  };
  return { clock, tick, idle: () => waiting === null };
}

function open(steps = 30) {
  const onEnd = vi.fn();
  const hand = handClock();
  const runner = createRunner({ clock: hand.clock, stepsOf: () => steps, onEnd });
  runner.command({ type: 'enter', station: 'bloom', scenario: farms[0]!, seed: 1 });
  return { runner, onEnd, ...hand };
}

test('a day at a time: three days a second, whole days only', () => {
  const { runner, tick } = open();
  runner.command({ type: 'run', speed: 'byDay' });
  for (let i = 0; i < 10; i++) tick(100);
  expect(runner.current().step).toBe(3);
});

test('a station of machines takes as long at a speed, however many its steps', () => {
  for (const steps of [24, 48, 96]) {
    const { runner, tick } = open(steps);
    runner.command({ type: 'enter', station: 'ginning', scenario: farms[0]!, seed: 1 });
    runner.command({ type: 'run', speed: 'byWeek' });
    for (let i = 0; i < 50; i++) tick(100);
    expect(Math.abs(runner.current().step - steps / 2)).toBeLessThanOrEqual(1);
  }
});

test('the frame rate does not change where the season stands', () => {
  const coarse = open();
  const fine = open();
  coarse.runner.command({ type: 'run', speed: 'byWeek' });
  fine.runner.command({ type: 'run', speed: 'byWeek' });
  for (let i = 0; i < 5; i++) coarse.tick(200);
  for (let i = 0; i < 100; i++) fine.tick(10);
  expect(Math.abs(coarse.runner.current().step - fine.runner.current().step)).toBeLessThanOrEqual(1);
});

test('the end is told once and the loop goes idle', () => {
  const { runner, tick, onEnd, idle } = open(5);
  runner.command({ type: 'run', speed: 'byStage' });
  for (let i = 0; i < 20; i++) tick(100);
  expect(runner.current().step).toBe(5);
  expect(onEnd).toHaveBeenCalledTimes(1);
  expect(idle()).toBe(true);
});

test('a closed lid does not fast-forward: one frame makes up a quarter second at most', () => {
  const { runner, tick } = open(300);
  runner.command({ type: 'run', speed: 'byDay' });
  tick(3_600_000);
  expect(runner.current().step).toBeLessThanOrEqual(1);
});

test('steps, seeks and holds', () => {
  const { runner, idle } = open();
  runner.command({ type: 'stepDay' });
  expect(runner.current().step).toBe(1);
  runner.seek(12);
  expect(runner.current().step).toBe(12);
  runner.seek(99);
  expect(runner.current().step).toBe(30);
  runner.command({ type: 'run', speed: 'byDay' });
  expect(runner.current().step).toBe(0);
  runner.command({ type: 'hold' });
  expect(idle()).toBe(true);
  runner.command({ type: 'toEnd' });
  expect(runner.current().step).toBe(30);
});

test('deciding again at a station keeps the day, as far as the station now lasts', () => {
  const { runner } = open(30);
  runner.seek(20);
  runner.command({ type: 'enter', station: 'bloom', scenario: farms[0]!, seed: 1 });
  expect(runner.current().step).toBe(20);
  runner.command({ type: 'enter', station: 'boll', scenario: farms[0]!, seed: 1 });
  expect(runner.current().step).toBe(0);
});

test('listeners hear each step until they stop listening', () => {
  const { runner } = open();
  const heard = vi.fn();
  const stopListening = runner.subscribe(heard);
  runner.command({ type: 'stepDay' });
  stopListening();
  runner.command({ type: 'stepDay' });
  expect(heard).toHaveBeenCalledTimes(1);
});
