import { describe, expect, test } from 'vitest';
import type { FieldPlan } from '../../../src/model/field/field-plan.ts';
import type { Growing } from '../../../src/model/field/growing.ts';
import { stepHarvest } from '../../../src/model/field/step-harvest.ts';
import { stepOpening } from '../../../src/model/field/step-opening.ts';
import type { WeatherYear } from '../../../src/model/field/weather.ts';
import { flowerOn, standingField, warmYear } from './hand-made-field.ts';
import { changedFrom, ordinary } from './plans.ts';

/** Flowers on days 60 and 80, run to the end: half the bolls open on day 108, the rest on day 128. */
function run(change: Partial<FieldPlan>, weather: WeatherYear = warmYear): Growing & { endDay: number } {
  const field = standingField({ ...ordinary.midSouth, ...change }, weather);
  flowerOn(field, 60, 1);
  flowerOn(field, 80, 1);
  const wait = { waitFrom: -1 };
  let i = 0;
  for (; i <= field.lastDay; i++) {
    stepOpening(field, i);
    if (stepHarvest(field, wait, i)) break;
  }
  return { ...field, endDay: i };
}
const planted = ordinary.midSouth.plantingDayOfYear;

describe('harvest aid', () => {
  test('is put on when enough bolls are open; picking follows after the days of waiting', () => {
    const field = run({ openPercent: 50, daysToHarvest: 14 });
    expect([field.aidDay, field.pickDays, field.endDay]).toEqual([108, [122], 122]);
  });
  test('comes about 25 October at the latest, where something is open', () => {
    const late = run({ openPercent: 50, daysToHarvest: 14, plantingDayOfYear: 191 });
    expect(late.aidDay + 191).toBe(299);
    const never = standingField({ ...ordinary.midSouth, plantingDayOfYear: 191 });
    flowerOn(never, 100, 1);
    stepHarvest(never, { waitFrom: -1 }, 298 - 191 + 5);
    expect(never.aidDay).toBe(-1);
  });
  test('is not used where it is not wanted', () => {
    const field = run({ harvestAid: false, openPercent: 50, daysToHarvest: 0 });
    expect([field.aidDay, field.pickDays]).toEqual([-1, [108]]);
  });
});
describe('picking', () => {
  test('waits for a dry day', () => {
    const wet = changedFrom(changedFrom(warmYear, planted + 122, { rainInches: 0.2 }), planted + 125, {
      rainInches: 0,
    });
    expect(run({ openPercent: 50, daysToHarvest: 14 }, wet).pickDays).toEqual([125]);
  });
  test('by hand comes again after 25 days while bolls are left, and stops when none are', () => {
    const hand = { harvestAid: false, method: 'hand', openPercent: 50, daysToHarvest: 0 } as const;
    expect(run({ ...hand, pickings: 2 }).pickDays).toEqual([108, 133]);
    expect(run({ ...hand, pickings: 1 }).pickDays).toEqual([108]);
    expect(run({ ...hand, pickings: 3 }).pickDays).toEqual([108, 133]);
  });
  test('a field never ripe enough for its aid is picked on 20 December', () => {
    const field = standingField({ ...ordinary.midSouth, harvestAid: false, openPercent: 95, daysToHarvest: 60 });
    flowerOn(field, 60, 1);
    flowerOn(field, 225, 1);
    const wait = { waitFrom: -1 };
    let over = false;
    for (let i = 0; !over; i++) {
      stepOpening(field, i);
      over = stepHarvest(field, wait, i);
    }
    expect(field.pickDays).toEqual([field.lastDay]);
  });
});
describe('frost', () => {
  const frostOn = (dayOfYear: number): WeatherYear => ({
    ...warmYear,
    days: warmYear.days.map((day) => (day.dayOfYear === dayOfYear ? { ...day, minF: 27 } : day)),
  });
  test('before July it kills the seedlings', () => {
    const field = run({}, frostOn(140));
    expect([field.killedYoung, field.endDay, field.pickDays]).toEqual([true, 140 - planted, []]);
  });
  test('after it growth is over, and picking waits at least ten days', () => {
    const field = run({ harvestAid: false, openPercent: 95, daysToHarvest: 0 }, frostOn(planted + 110));
    expect([field.killedYoung, field.closed, field.frostDay]).toEqual([false, 110, 110]);
    expect(field.pickDays).toEqual([120]);
  });
  test('29 degrees and a little more is no killing frost', () => {
    const mild = {
      ...warmYear,
      days: warmYear.days.map((day) => (day.dayOfYear === 140 ? { ...day, minF: 29.5 } : day)),
    };
    expect(run({}, mild).killedYoung).toBe(false);
  });
});
