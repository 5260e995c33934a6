import { describe, expect, test } from 'vitest';
import { climateOf } from '../../../src/model/field/climates.ts';
import { generateWeather } from '../../../src/model/field/generate-weather.ts';
import { openStream } from '../../../src/model/random.ts';
import { climateIds } from '../../../src/model/scenario.ts';
import { weatherOf } from './plans.ts';

describe.each(climateIds)('%s', (id) => {
  test('a year has 365 days in order, each with its low below its high and no negative rain', () => {
    const { days, year, origin } = weatherOf(id, 7);
    expect(days.map((day) => day.dayOfYear)).toEqual(Array.from({ length: 365 }, (_, i) => i + 1));
    for (const { maxF, minF, rainInches } of days) {
      expect(minF).toBeLessThanOrEqual(maxF - 1 + 1e-9);
      expect(rainInches === 0 || rainInches >= 0.01).toBe(true);
    }
    expect([year, origin]).toEqual([null, 'generated']);
  });
});
test('the same seed gives the same year, another seed another', () => {
  expect(weatherOf('midSouth', 3)).toEqual(weatherOf('midSouth', 3));
  expect(weatherOf('midSouth', 3)).not.toEqual(weatherOf('midSouth', 4));
});
test('wet days are cooler than dry ones', () => {
  const july = Array.from({ length: 60 }, (_, seed) => weatherOf('midSouth', seed).days.slice(181, 212)).flat();
  const mean = (wet: boolean) => {
    const some = july.filter((day) => day.rainInches > 0 === wet);
    return some.reduce((sum, day) => sum + day.maxF, 0) / some.length;
  };
  expect(mean(false)).toBeGreaterThan(mean(true) + 4);
});
test('yesterday is remembered: hot days come together', () => {
  const { days } = weatherOf('highPlains', 1);
  const departures = days.slice(150, 240).map((day) => day.maxF);
  const mean = departures.reduce((a, b) => a + b, 0) / departures.length;
  let together = 0;
  let square = 0;
  for (let i = 1; i < departures.length; i++) {
    together += (departures[i]! - mean) * (departures[i - 1]! - mean);
    square += (departures[i]! - mean) ** 2;
  }
  expect(together / square).toBeGreaterThan(0.15);
});
test('the year closes on itself: no step between the months, nor from December to January', () => {
  const calm = {
    ...climateOf('midSouth'),
    wetAfterWet: new Array(12).fill(0),
    wetAfterDry: new Array(12).fill(0),
    sdMaxF: new Array(12).fill(0),
    sdMinF: new Array(12).fill(0),
  };
  const { days } = generateWeather(calm, openStream(1, 'weather'));
  for (let i = 0; i < 365; i++) expect(Math.abs(days[(i + 1) % 365]!.maxF - days[i]!.maxF)).toBeLessThan(0.5);
});
test('desert farm land has cooler nights than the airport of its station', () => {
  const { levers, minF } = climateOf('lowDesert');
  expect(levers.farmNightF.value).toBeLessThan(0);
  const july = Array.from({ length: 60 }, (_, seed) => weatherOf('lowDesert', seed).days.slice(181, 212)).flat();
  const mean = july.reduce((sum, day) => sum + day.minF, 0) / july.length;
  expect(Math.abs(mean - (minF[6]! + levers.farmNightF.value))).toBeLessThan(1);
});
