import { describe, expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { type StationId, stationIds } from '../../src/model/station.ts';
import { dayAt, stationSpan, stepOn } from '../../src/model/timeline.ts';
import { timelineFacts } from '../../src/model/timeline-facts.ts';

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
  test('the planting day is watched as steps of sowing, then every step is a day', () => {
    const planting = span('planting');
    const sowing = timelineFacts.workSteps.value;
    expect(planting.firstDaySteps).toBe(sowing);
    for (let step = 0; step <= sowing; step++) expect(dayAt(planting, step)).toBe(planting.fromDay);
    expect(dayAt(planting, sowing + 1)).toBe(planting.fromDay + 1);
    expect(dayAt(planting, planting.steps)).toBe(planting.toDay);
    expect(planting.steps - sowing).toBe(planting.toDay - planting.fromDay);
  });
  test('a day asked of the ribbon leads to a step that shows that day', () => {
    for (const station of ['planting', 'bloom', 'boll'] as const)
      for (let day = span(station).fromDay; day <= span(station).toDay; day++)
        expect(dayAt(span(station), stepOn(span(station), day))).toBe(day);
    expect(stepOn(span('planting'), 0)).toBe(0);
    expect(stepOn(span('bloom'), 999)).toBe(span('bloom').steps);
  });
});

test('a crop that failed still has spans of at least one step', () => {
  const plains = farms.find(({ id }) => id === 'high-plains-dryland')!;
  const planting = { ...plains.decisions.planting, plantingDayOfYear: 191 };
  const season = runSeason({ ...plains, decisions: { ...plains.decisions, planting } }, 3, null);
  expect(season.stopped).not.toBeNull();
  for (const station of stationIds) expect(stationSpan(season, station).steps).toBeGreaterThan(0);
});
