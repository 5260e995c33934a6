import { describe, expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { type StationId, stationIds } from '../../src/model/station.ts';
import { dayAt, stationSpan } from '../../src/model/timeline.ts';

describe.each(farms)('$id', (farm) => {
  const season = runSeason(farm, 1, null);
  const span = (station: StationId) => stationSpan(season, station);

  test('the stations follow one another without a gap, from planting to the gin', () => {
    for (const [index, station] of stationIds.entries()) {
      const next = stationIds[index + 1];
      if (next) expect(span(next).fromDay).toBe(span(station).toDay);
      expect(span(station).steps).toBeGreaterThan(0);
      expect(span(station).toDay).toBeGreaterThanOrEqual(span(station).fromDay);
    }
    expect(span('planting').fromDay).toBe(season.field.plantedDay);
    expect(span('module').toDay - span('module').fromDay).toBe(farm.decisions.module.storageDays);
  });

  test('a step in the field is a day, and the last step is the last day', () => {
    const bloom = span('bloom');
    expect(dayAt(bloom, 0)).toBe(bloom.fromDay);
    expect(dayAt(bloom, 1)).toBe(bloom.fromDay + 1);
    expect(dayAt(bloom, bloom.steps)).toBe(bloom.toDay);
    expect(dayAt(bloom, bloom.steps + 99)).toBe(bloom.toDay);
  });
});

test('a crop that failed still has spans of at least one step', () => {
  const plains = farms.find(({ id }) => id === 'high-plains-dryland')!;
  const planting = { ...plains.decisions.planting, plantingDayOfYear: 191 };
  const season = runSeason({ ...plains, decisions: { ...plains.decisions, planting } }, 3, null);
  expect(season.stopped).not.toBeNull();
  for (const station of stationIds) expect(stationSpan(season, station).steps).toBeGreaterThan(0);
});
