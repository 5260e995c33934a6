import { describe, expect, test } from 'vitest';
import { closeSeason, stepOpening } from '../../../src/model/field/step-opening.ts';
import { flowerOn, standingField } from './hand-made-field.ts';

const open = (from: number, to: number, field = standingField()) => {
  for (let i = from; i <= to; i++) stepOpening(field, i);
  return field;
};

test('in warm weather a boll opens 48 days after its flower, ripe', () => {
  const field = standingField();
  flowerOn(field, 60, 2, 0.5);
  open(60, 107, field);
  expect(field.totals.bollsOpen).toBe(0);
  open(108, 108, field);
  expect(field.totals.bollsOpen).toBe(1);
  expect([field.calendar.openDay[60], field.calendar.openAge[60]]).toEqual([108, 45]);
  expect(field.stages.firstOpenBoll).toBe(108);
});
describe('once the season is closed', () => {
  const closed = (gain: number) => {
    const field = standingField();
    for (const day of [60, 70, 71, 72, 73]) flowerOn(field, day, 1);
    open(60, 107, field);
    closeSeason(field, 107, gain);
    return field;
  };
  test('bolls of 36 warm days or more open within two weeks, younger ones never', () => {
    const field = open(108, 140, closed(1));
    expect([60, 70, 71, 72].map((day) => field.calendar.openDay[day])).toEqual([108, 118, -1, -1]);
    expect(field.totals.bollsOpen).toBe(2);
  });
  test('they open as full as they were, and a little more', () => {
    const age = (107 - 70) * (45 / 48);
    expect(open(108, 140, closed(1)).calendar.openAge[70]).toBeCloseTo(age + 1, 9);
    expect(open(108, 140, closed(0)).calendar.openAge[70]).toBeCloseTo(age, 9);
    expect(open(108, 140, closed(30)).calendar.openAge[70]).toBe(45);
  });
});
