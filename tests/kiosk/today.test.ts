import { describe, expect, test } from 'vitest';
import { dayOfYearOf, todayOn } from '../../src/kiosk/today.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';

const seasons = farms.map((farm) => runSeason(farm, 1, null));
const order = ['planting', 'bloom', 'boll', 'harvest', 'module', 'gin', 'mill', 'sewing', 'seed'];

describe.each(seasons.map((season) => [season.scenario.id, season] as const))('%s', (_, season) => {
  const { plantedDay, events, harvestDays } = season.field;
  const year = Array.from({ length: 365 }, (_unused, i) => ({ day: i + 1, ...todayOn(season, i + 1) }));
  test('the field follows the season’s own dates', () => {
    const on = (day: number) => todayOn(season, day).work;
    expect(on(plantedDay)).toBe('planting');
    expect(on(plantedDay - 1)).toBe('seed');
    expect(on(events.firstFlower!)).toBe('bloom');
    expect(on(events.firstOpenBoll!)).toBe('boll');
    expect(on(harvestDays[0]!)).toBe('harvest');
  });
  test('the year goes round once, in order; in winter the gin, the mill, the table and the seed for spring, a like share each', () => {
    const from = plantedDay - 1;
    const works = [...year.slice(from), ...year.slice(0, from)].map(({ work }) => work);
    const turns = works.filter((work, i) => work !== works[i - 1]);
    expect(turns).toEqual(order);
    const winter = ['gin', 'mill', 'sewing', 'seed'].map((kind) => works.filter((work) => work === kind).length);
    expect(Math.max(...winter) - Math.min(...winter)).toBeLessThanOrEqual(1);
    expect(Math.min(...winter)).toBeGreaterThan(20);
  });
  test('work is never more than all of it', () => {
    for (const { progress } of year) {
      expect(progress).toBeGreaterThanOrEqual(0);
      expect(progress).toBeLessThanOrEqual(1);
    }
  });
});

test('days of the year by the clock on the wall', () => {
  expect(dayOfYearOf(new Date(2025, 0, 1, 0, 5))).toBe(1);
  expect(dayOfYearOf(new Date(2025, 6, 4, 23, 59))).toBe(185);
  expect(dayOfYearOf(new Date(2025, 11, 31))).toBe(365);
  expect(dayOfYearOf(new Date(2024, 11, 31))).toBe(365);
});
