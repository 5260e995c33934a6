import { expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { bollAgesOf, bollPace } from '../../../src/model/field/boll-clock.ts';
import { climateOf } from '../../../src/model/field/climates.ts';
import { varietyOf } from '../../../src/model/field/varieties.ts';

const grown = farms.map((farm) => runSeason(farm, 3, null));
const agesOf = ({ field, weather, scenario }: (typeof grown)[number]) =>
  bollAgesOf(field, weather, climateOf(scenario.climate).bollClock);

test('the reference variety keeps the clock; Pima needs more heat and runs slower', () => {
  expect(bollPace(varietyOf('uplandMedium', 'present'))).toBe(1);
  expect(bollPace(varietyOf('pima', 'present'))).toBeCloseTo(900 / 950, 12);
});
test('a boll that opens by itself is 45 days old on its clock, within the day it opens on; at opening the model wrote down the same age', () => {
  for (const season of grown) {
    const { calendar, plantedDay, events, days } = season.field;
    const ageOn = agesOf(season);
    for (let flower = 0; flower < calendar.dayCount; flower++) {
      const open = calendar.openDay[flower]!;
      if (open < 0 || calendar.flowers.every((flowers) => flowers[flower] === 0)) continue;
      const [flowerDay, openDay] = [plantedDay + flower, plantedDay + open];
      expect(ageOn(flowerDay, openDay)).toBe(calendar.openAge[flower]);
      if (openDay > Math.min(days.at(-1)!.dayOfYear, events.harvestAid ?? 999, events.killingFrost ?? 999)) continue;
      expect(ageOn(flowerDay, openDay)).toBeCloseTo(45, 6);
      expect(ageOn(flowerDay, openDay - 1)).toBeLessThan(45 + 1e-6);
      expect(ageOn(flowerDay, openDay - 1)).toBeGreaterThan(45 - 45 / 48 - 1e-6);
    }
  }
});
test('age never runs backwards, begins at nothing and stands still once the boll is open', () => {
  for (const season of grown) {
    const { plantedDay, days, events, harvestDays } = season.field;
    const ageOn = agesOf(season);
    const flowerDay = events.firstFlower! + 5;
    let before = 0;
    expect(ageOn(flowerDay, flowerDay)).toBe(0);
    for (let day = flowerDay; day <= days.at(-1)!.dayOfYear; day++) {
      const age = ageOn(flowerDay, day);
      expect(age).toBeGreaterThanOrEqual(before - 1e-9);
      before = age;
    }
    const opened = season.field.calendar.openDay[flowerDay - plantedDay]!;
    if (opened >= 0)
      expect(ageOn(flowerDay, harvestDays[0]!)).toBe(season.field.calendar.openAge[flowerDay - plantedDay]);
  }
});
test('after a harvest aid a green boll gains a day at most', () => {
  for (const season of grown) {
    const { harvestAid } = season.field.events;
    if (harvestAid === null) continue;
    const ageOn = agesOf(season);
    for (let flowerDay = season.field.events.firstFlower!; flowerDay < harvestAid; flowerDay++)
      expect(ageOn(flowerDay, harvestAid + 5) - ageOn(flowerDay, harvestAid)).toBeLessThanOrEqual(1 + 1e-9);
  }
});
