import { expect, test } from 'vitest';
import { planFileText, readPlanFile } from '../../../src/teach/plan/plan-file.ts';
import { everyPlan, season } from './any-plan.ts';

const plan = everyPlan[0]!.plan;
const fileWith = (change: object) => JSON.stringify({ ...JSON.parse(planFileText(plan)), ...change });
const fieldsOf = (text: string) => {
  const read = readPlanFile(text, 'plan.json');
  return read.ok ? [] : read.problems.map(({ field, value }) => `${field}: ${value}`);
};

test('a file brings back every plan', () => {
  for (const { plan: each } of everyPlan)
    expect(readPlanFile(planFileText(each), 'plan.json')).toEqual({ ok: true, value: each });
  expect(readPlanFile(`\uFEFF${planFileText(plan)}`, 'plan.json').ok).toBe(true);
});

test('junk is named by field and value', () => {
  expect(fieldsOf('not a plan')).toEqual(['plan.json: not JSON']);
  expect(fieldsOf('x'.repeat(30_000))).toEqual(['plan.json: too large']);
  expect(fieldsOf('[]')).toContain('minutes: nothing');
  expect(fieldsOf(fileWith({ minutes: 25 }))).toEqual(['minutes: 25']);
  expect(fieldsOf(fileWith({ audience: 'pets' }))).toEqual(['audience: "pets"']);
  expect(fieldsOf(fileWith({ colour: 'red' }))).toEqual(['colour: "colour"']);
  expect(fieldsOf(fileWith({ version: 2 }))).toEqual(['version: 2']);
  expect(fieldsOf(fileWith({ stops: [{ stop: 'nap', minutes: 2.5 }] }))).toEqual([
    'stops.0.stop: "nap"',
    'stops.0.minutes: 2.5',
  ]);
  expect(fieldsOf(fileWith({ stops: 'all' }))).toEqual(['stops: "all"']);
});

test('parts that do not fit each other are named too', () => {
  const opening = { stop: 'opening', minutes: 2 };
  expect(fieldsOf(fileWith({ stops: [opening, opening] }))).toEqual(['stops: opening']);
  expect(fieldsOf(fileWith({ stops: [{ stop: 'opening', minutes: 11 }] }))).toEqual(['stops.minutes: 11']);
  expect(fieldsOf(fileWith({ stops: [{ stop: 'at-boll', minutes: 1 }] }))).toEqual(['stops.0.minutes: 1']);
  expect(fieldsOf(fileWith({ season: `${season}&herd=9` }))).toEqual(['season: herd=9']);
});
