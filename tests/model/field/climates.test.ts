import { expect, test } from 'vitest';
import { climateOf } from '../../../src/model/field/climates.ts';
import { climateIds } from '../../../src/model/scenario.ts';

test('each climate carries its station, its levers and its boll clock', () => {
  for (const id of climateIds) {
    const climate = climateOf(id);
    expect(climate.id).toBe(id);
    expect(climate.maxF).toHaveLength(12);
    expect(climate.levers.capacityLintLbPerAcre.value).toBeGreaterThan(1000);
  }
  expect(climateIds.map((id) => climateOf(id).station)).toEqual([
    'Headland, Alabama',
    'Stoneville, Mississippi',
    'Crosbyton, Texas',
    'Phoenix, Arizona',
    'Fresno, California',
  ]);
});
test('only Arizona counts its bolls in its own heat units', () => {
  expect(climateIds.filter((id) => climateOf(id).bollClock === 'hu8655')).toEqual(['lowDesert']);
});
test('the dry plains lose more rain and begin the year drier than the humid belt', () => {
  const [dry, wet] = [climateOf('highPlains').levers, climateOf('coastalPlain').levers];
  expect(dry.effectiveRainFraction.value).toBeLessThan(wet.effectiveRainFraction.value);
  expect(dry.startingWaterFraction.value).toBeLessThan(wet.startingWaterFraction.value);
});
