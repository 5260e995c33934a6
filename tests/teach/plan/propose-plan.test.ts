import { expect, test } from 'vitest';
import { focusStops } from '../../../src/teach/plan/focus-stops.ts';
import { freeMinutes } from '../../../src/teach/plan/plan.ts';
import { proposePlan, spreadMinutes } from '../../../src/teach/plan/propose-plan.ts';
import { audiences, focuses } from '../../../src/teach/plan/stop.ts';
import { stopList, stopOf } from '../../../src/teach/plan/stop-list.ts';
import { everyPlan, season } from './any-plan.ts';

test('there are 80 wishes: 4 lengths, 4 audiences, 5 focuses', () => {
  expect(everyPlan).toHaveLength(80);
});

test.each(everyPlan)('$name: minutes add up exactly, each stop within its own', ({ plan }) => {
  expect(plan.stops.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(plan.minutes);
  for (const { id, minutes } of plan.stops) {
    const { least, most } = stopOf(id)!.minutes;
    expect(minutes).toBeGreaterThanOrEqual(least);
    expect(minutes).toBeLessThanOrEqual(most);
  }
});

test.each(everyPlan)(
  '$name: opens, recaps, holds its focus’s first stop, every stop once and for this audience',
  ({ plan }) => {
    const ids = plan.stops.map(({ id }) => id);
    expect(ids[0]).toBe('opening');
    expect(ids.at(-1)).toBe('recap');
    expect(new Set(ids).size).toBe(ids.length);
    const fitting = focusStops[plan.focus].filter((stop) => stop.for.includes(plan.audience));
    const first = Math.min(...fitting.map(({ rank }) => rank).filter((rank) => rank > 0));
    expect(fitting.some(({ id, rank }) => rank === first && ids.includes(id))).toBe(true);
    for (const id of ids) expect(fitting.some((stop) => stop.id === id)).toBe(true);
  },
);

test('a longer segment never has fewer stops, and every focus asks the class to guess', () => {
  for (const audience of audiences) {
    for (const focus of focuses) {
      const plans = ([10, 20, 30, 45] as const).map((minutes) => proposePlan({ minutes, audience, focus }, season));
      const counts = plans.map(({ stops }) => stops.length);
      expect(counts).toEqual([...counts].sort((a, b) => a - b));
      for (const { stops } of plans)
        expect(stops.some(({ id }) => ['station', 'question', 'bench'].includes(stopOf(id)!.aim.kind))).toBe(true);
    }
  }
});

test('every stop is in some focus, or can be put in by hand; ids are unique', () => {
  const ids = stopList.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const { id } of Object.values(focusStops).flat()) expect(ids).toContain(id);
});

test('minutes that no stop can take stay free', () => {
  const stops = spreadMinutes([{ id: 'recap', minutes: 1 }], 45);
  const most = stopOf('recap')!.minutes.most;
  expect(stops).toEqual([{ id: 'recap', minutes: most }]);
  expect(freeMinutes({ minutes: 45, audience: 'teens', focus: 'cloth', season, stops })).toBe(45 - most);
});
