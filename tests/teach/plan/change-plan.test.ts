import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  addStop,
  dropStop,
  lengthenStop,
  moveStop,
  shortenStop,
  spreadFree,
  stopsLeftOut,
} from '../../../src/teach/plan/change-plan.ts';
import { freeMinutes, type Plan, plannedMinutes } from '../../../src/teach/plan/plan.ts';
import { planNeeds } from '../../../src/teach/plan/plan-needs.ts';
import { stopList, stopOf } from '../../../src/teach/plan/stop-list.ts';
import { propertySeed, runs } from '../../laws/runs.ts';
import { everyPlan } from './any-plan.ts';

const first = everyPlan[0]!.plan;
const anyId = fc.constantFrom(...stopList.map(({ id }) => id));
const anyChange: fc.Arbitrary<(plan: Plan) => Plan> = fc.oneof(
  fc.tuple(anyId, fc.constantFrom(-1, 1)).map(
    ([id, by]) =>
      (plan: Plan) =>
        moveStop(plan, id, by),
  ),
  anyId.map((id) => (plan: Plan) => dropStop(plan, id)),
  anyId.map((id) => (plan: Plan) => lengthenStop(plan, id)?.plan ?? plan),
  anyId.map((id) => (plan: Plan) => shortenStop(plan, id) ?? plan),
  anyId.map((id) => (plan: Plan) => addStop(plan, id) ?? plan),
  fc.constant(spreadFree),
);

test('law: after any changes, stops and free minutes add up, none is below its least and none stands twice', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...everyPlan.map(({ plan }) => plan)),
      fc.array(anyChange, { maxLength: 30 }),
      (plan, changes) => {
        const changed = changes.reduce((now, change) => change(now), plan);
        expect(plannedMinutes(changed.stops) + freeMinutes(changed)).toBe(plan.minutes);
        expect(freeMinutes(changed)).toBeGreaterThanOrEqual(0);
        for (const { id, minutes } of changed.stops) expect(minutes).toBeGreaterThanOrEqual(stopOf(id)!.minutes.least);
        expect(new Set(changed.stops.map(({ id }) => id)).size).toBe(changed.stops.length);
        expect(stopsLeftOut(changed).length + changed.stops.length).toBe(stopList.length);
      },
    ),
    { seed: propertySeed, numRuns: runs(1000) },
  );
});

test('a longer stop takes a free minute first, and then one from the stop that has most to give', () => {
  const shorter = shortenStop(first, first.stops[1]!.id)!;
  expect(freeMinutes(shorter)).toBe(1);
  const free = lengthenStop(shorter, 'opening')!;
  expect(free.from).toBeNull();
  const given = lengthenStop(free.plan, 'opening')!;
  const giver = stopOf(given.from!)!;
  expect(given.plan.stops.find(({ id }) => id === giver.id)!.minutes).toBe(
    free.plan.stops.find(({ id }) => id === giver.id)!.minutes - 1,
  );
});

test('a stop put in stands before the recap; dropped, its minutes are free and can be handed out', () => {
  const dropped = dropStop(first, first.stops[1]!.id);
  expect(freeMinutes(dropped)).toBe(first.stops[1]!.minutes);
  const added = addStop(dropped, 'bench-thread')!;
  expect(added.stops.at(-2)!.id).toBe('bench-thread');
  expect(freeMinutes(spreadFree(added))).toBe(0);
  expect(addStop(added, 'bench-thread')).toBeNull();
});

test('moved beyond an end, a plan stays as it is', () => {
  expect(moveStop(first, 'opening', -1)).toBe(first);
  expect(moveStop(first, 'opening', 1).stops.map(({ id }) => id)).toEqual([
    first.stops[1]!.id,
    'opening',
    ...first.stops.slice(2).map(({ id }) => id),
  ]);
});

test('a plan names each material, word and standard once', () => {
  for (const { plan } of everyPlan) {
    const { materials, vocabulary, standards } = planNeeds(plan);
    for (const list of [materials, vocabulary, standards]) {
      expect(list.length).toBeGreaterThan(0);
      expect(new Set<string>(list).size).toBe(list.length);
    }
  }
});
