import { expect, test } from 'vitest';
import {
  firstState,
  pressed,
  pressOfKey,
  readMessage,
  readState,
  type ShowPress,
  type ShowState,
  stopMs,
  wholeMs,
} from '../../../src/teach/show/show-state.ts';
import { showSteps } from '../../../src/teach/show/show-steps.ts';
import { everyPlan } from '../plan/any-plan.ts';

const query = 'minutes=10';
const { plan } = everyPlan.find(({ plan: { stops } }) => stops.length > 3)!;
const steps = showSteps(plan);
const first = firstState(query);
/** Presses one after another, each with the moment it is made at, ms. */
const after = (presses: readonly (readonly [ShowPress, number])[], from: ShowState = first) =>
  presses.reduce((state, [press, ms]) => pressed(state, press, steps, ms), from);

test('presses turn the steps and stop at both ends; a turn ends the blank', () => {
  expect(after([['back', 9]]).step).toBe(0);
  expect(
    after([
      ['last', 9],
      ['next', 10],
    ]).step,
  ).toBe(steps.length - 1);
  expect(
    after([
      ['next', 9],
      ['next', 10],
      ['back', 11],
    ]).step,
  ).toBe(1);
  expect(
    after([
      ['next', 9],
      ['blank', 10],
    ]),
  ).toMatchObject({ step: 1, blank: true });
  expect(
    after([
      ['blank', 10],
      ['next', 11],
    ]),
  ).toMatchObject({ step: 1, blank: false });
  expect(
    after([
      ['last', 9],
      ['first', 10],
    ]).step,
  ).toBe(0);
  expect(pressed(first, 'next', [], 9).step).toBe(0);
});

test('time is counted to the stop that is on, from the first turn; a pause stops it, a way back goes on, a restart begins anew', () => {
  const second = steps.findIndex(({ place }) => place === 1);
  let state = after([['next', 1000]]);
  expect([stopMs(state, steps, 0, 4000), wholeMs(state, steps, 4000)]).toEqual([3000, 3000]);
  while (state.step < second) state = pressed(state, 'next', steps, 5000);
  expect([0, 1].map((place) => stopMs(state, steps, place, 7000))).toEqual([4000, 2000]);
  state = pressed(state, 'clock', steps, 7000);
  expect(wholeMs(state, steps, 60_000)).toBe(6000);
  state = after(
    [
      ['clock', 60_000],
      ['back', 61_000],
    ],
    state,
  );
  expect([0, 1].map((place) => stopMs(state, steps, place, 62_000))).toEqual([5000, 3000]);
  expect(wholeMs(state, steps, 62_000)).toBe(8000);
  expect(after([['restart', 63_000]], state)).toEqual({ ...first, changedMs: 63_000 });
});

test('every change is later than the one before, even within a millisecond', () => {
  const twice = after([
    ['next', 5],
    ['next', 5],
  ]);
  expect(twice.changedMs).toBeGreaterThan(after([['next', 5]]).changedMs);
});

test('a kept state comes back for its own plan only; junk does not', () => {
  const state = after([['next', 5]]);
  expect(readState(JSON.stringify(state), query)).toEqual(state);
  expect(readState(JSON.stringify(state), 'minutes=20')).toBeNull();
  for (const junk of [
    null,
    '',
    '{',
    '[]',
    JSON.stringify({ ...state, step: -1 }),
    JSON.stringify({ ...state, more: 1 }),
  ])
    expect(readState(junk, query)).toBeNull();
});

test('only our own messages are heard', () => {
  expect(readMessage({ kind: 'hello', query })).toEqual({ kind: 'hello', query });
  expect(readMessage({ kind: 'state', state: first })).toEqual({ kind: 'state', state: first });
  for (const junk of [null, 'hello', { kind: 'press', press: 'leap' }, { kind: 'state', state: { step: 1 } }])
    expect(readMessage(junk)).toBeNull();
});

test('a clicker’s two keys and the usual ones are known (UI Events: named key attribute values)', () => {
  const keys = ['PageDown', 'PageUp', 'ArrowRight', 'ArrowLeft', ' ', 'b', '.', 'Home', 'End'];
  expect(keys.map((key) => pressOfKey[key])).toEqual([
    'next',
    'back',
    'next',
    'back',
    'next',
    'blank',
    'blank',
    'first',
    'last',
  ]);
});
