import { expect, test } from 'vitest';
import { leafRemaining, weatheredColour, weatherLoss } from '../../../src/model/field/weathering.ts';

test('rain takes cotton inch by inch, never more than there is', () => {
  expect(weatherLoss(0)).toBe(0);
  expect(weatherLoss(2)).toBeCloseTo(2 * weatherLoss(1), 12);
  expect(weatherLoss(1000)).toBe(1);
});
test('fresh upland is bright, fresh Pima creamier', () => {
  const upland = weatheredColour('upland', 0, 0, 1);
  const pima = weatheredColour('pima', 0, 0, 1);
  // The lint alone, before trash darkens it.
  expect(upland.reflectanceRd).toBeGreaterThan(78);
  expect(upland.reflectanceRd).toBeLessThan(83);
  expect(upland.yellownessB).toBe(8.5);
  expect(pima.reflectanceRd).toBeLessThan(upland.reflectanceRd);
  expect(pima.yellownessB).toBeGreaterThan(upland.yellownessB + 2);
});
test('rain and days gray and yellow it; an unfilled boll opens yellow', () => {
  const fresh = weatheredColour('upland', 0, 0, 1);
  const rained = weatheredColour('upland', 2, 0, 1);
  const old = weatheredColour('upland', 0, 30, 1);
  for (const worse of [rained, old]) {
    expect(worse.reflectanceRd).toBeLessThan(fresh.reflectanceRd);
    expect(worse.yellownessB).toBeGreaterThan(fresh.yellownessB);
  }
  expect(weatheredColour('upland', 0, 0, 0.6).yellownessB).toBeGreaterThan(fresh.yellownessB + 1);
  expect(weatheredColour('upland', 500, 0, 1).reflectanceRd).toBeGreaterThan(50);
});
test('leaf falls in days after the aid, sticks more after frost, stays otherwise', () => {
  expect(leafRemaining(0, null)).toBe(1);
  expect(leafRemaining(14, null)).toBeLessThan(0.2);
  expect(leafRemaining(null, 14)).toBeGreaterThan(leafRemaining(14, null));
  expect(leafRemaining(null, null)).toBe(1);
});
