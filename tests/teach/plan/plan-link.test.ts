import fc from 'fast-check';
import { expect, test } from 'vitest';
import { farms } from '../../../src/model/farms.ts';
import { encodeRun } from '../../../src/statechart/saved-run.ts';
import { plannedMinutes } from '../../../src/teach/plan/plan.ts';
import { decodePlan, encodePlan } from '../../../src/teach/plan/plan-link.ts';
import { propertySeed, runs } from '../../laws/runs.ts';
import { everyPlan } from './any-plan.ts';

test('law: a link brings back any plan with its season, under 300 characters', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...everyPlan.map(({ plan }) => plan)),
      fc.constantFrom(...farms),
      fc.integer({ min: 0, max: 999_999 }),
      (proposed, scenario, seed) => {
        const plan = { ...proposed, season: encodeRun({ scenario, seed }) };
        const query = encodePlan(plan);
        expect(`https://a-school-host.example/seamfield/#/teach/show?${query}`.length).toBeLessThan(300);
        expect(decodePlan(query)).toEqual({ plan, problems: [] });
      },
    ),
    { seed: propertySeed, numRuns: runs(500) },
  );
});

test('law: junk never fails; what is kept is a plan that fits', () => {
  fc.assert(
    fc.property(fc.string(), fc.string({ maxLength: 40 }), (query, stops) => {
      for (const text of [query, `minutes=10&stops=${stops}`]) {
        const { plan } = decodePlan(text);
        expect(plannedMinutes(plan.stops)).toBeLessThanOrEqual(plan.minutes);
      }
    }),
    { seed: propertySeed, numRuns: runs(500) },
  );
});

test('what cannot be read is named with what is allowed, and the rest is kept', () => {
  const { plan, problems } = decodePlan(
    'minutes=25&for=pets&about=staple&stops=00200201zzz&v=1&farm=river-bottom&seed=4',
  );
  expect(plan).toMatchObject({ minutes: 20, audience: 'teens', focus: 'staple' });
  expect(plan.season).toBe('v=1&farm=river-bottom&seed=4');
  expect(plan.stops).toEqual([{ id: 'opening', minutes: 2 }]);
  expect(problems).toEqual([
    { field: 'minutes', value: '25', rule: { kind: 'choice', options: ['10', '20', '30', '45'] } },
    { field: 'for', value: 'pets', rule: { kind: 'choice', options: ['children', 'teens', 'adults', 'guild'] } },
    { field: 'stops', value: '002', rule: { kind: 'type', expected: 'a stop that fits' } },
    { field: 'stops', value: '01z', rule: { kind: 'type', expected: 'a stop that fits' } },
    { field: 'stops', value: 'zz', rule: { kind: 'type', expected: 'a stop that fits' } },
  ]);
});
