import { expect, test } from 'vitest';
import { meanBetween, seasonHeat, sumBetween } from '../../../src/model/field/season-heat.ts';
import { evenYear, weatherOf } from './plans.ts';

test('sums run from the planting day, each with its own day', () => {
  const heat = seasonHeat(evenYear(90, 70, 0.5), 100, 20, 'dd60');
  expect([...heat.dd60.slice(0, 3)]).toEqual([20, 40, 60]);
  expect(heat.rainInches[19]).toBeCloseTo(10, 12);
  expect(heat.coldNights[19]).toBe(0);
});
test('a sum between two days leaves out the first; a window before planting starts with nothing', () => {
  const heat = seasonHeat(evenYear(90, 70, 0.5), 100, 20, 'dd60');
  expect(sumBetween(heat.dd60, 4, 7)).toBe(60);
  expect(sumBetween(heat.dd60, -1, 1)).toBe(40);
  expect(meanBetween(heat.dd60, 4, 7)).toBe(20);
  expect(meanBetween(heat.dd60, 7, 7)).toBe(0);
});
test('a boll’s clock has a ceiling: hot days hasten plants, not bolls', () => {
  const hot = seasonHeat(evenYear(110, 80, 0), 100, 60, 'dd60');
  expect(hot.dd60[59]).toBe(60 * 35);
  expect(hot.bollAge[47]).toBeCloseTo(45, 9);
  expect(seasonHeat(evenYear(110, 80, 0), 100, 60, 'hu8655').bollAge[47]).toBeCloseTo(45, 9);
});
test('in cool weather the two clocks run by their own heat', () => {
  const age = (clock: 'dd60' | 'hu8655') => seasonHeat(evenYear(75, 55, 0), 100, 30, clock).bollAge[29]!;
  expect(age('dd60')).toBeCloseTo((45 * 30 * 5) / 900, 9);
  expect(age('hu8655')).toBeCloseTo((45 * 30 * 10) / 1000, 9);
});
test('cool filling thins, warm filling thickens, desert heat adds no more', () => {
  const gain = (maxF: number, minF: number) => seasonHeat(evenYear(maxF, minF, 0), 100, 1, 'dd60').fillGain[0]!;
  expect(gain(80, 60)).toBeLessThan(gain(90, 70));
  expect(gain(90, 70)).toBe(0);
  expect(gain(110, 86)).toBeLessThan(gain(95, 71));
});
test('each day of a real sum is the day’s own', () => {
  const weather = weatherOf('highPlains', 2);
  const heat = seasonHeat(weather, 130, 50, 'dd60');
  let rain = 0;
  for (let i = 0; i < 50; i++) {
    rain += weather.days[129 + i]!.rainInches;
    expect(heat.rainInches[i]).toBeCloseTo(rain, 10);
  }
});
