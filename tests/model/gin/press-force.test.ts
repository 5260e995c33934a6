import { describe, expect, test } from 'vitest';
import { fullStrokeDensity, meganewtons, pressForceLb, universalDensity } from '../../../src/model/gin/press-force.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';

describe('the force', () => {
  test('goes up with density and down with moisture', () => {
    expect(pressForceLb(40, 5)).toBeGreaterThan(pressForceLb(36, 5));
    expect(pressForceLb(40, 7)).toBeLessThan(pressForceLb(40, 5));
  });
  test('is a straight line of logarithms — USDA Tech. Bull. 1546', () => {
    const slope = (low: number, high: number) =>
      Math.log(pressForceLb(high, 6) / pressForceLb(low, 6)) / Math.log(high / low);
    expect(slope(20, 30)).toBeCloseTo(slope(30, 45), 12);
  });
  test('a lighter bale in the same stroke needs less', () => {
    expect(fullStrokeDensity(kilogramsFromPounds(500))).toBeCloseTo(40, 12);
    expect(fullStrokeDensity(kilogramsFromPounds(480))).toBeCloseTo(38.4, 12);
  });
  test('a pound-force is 4.448 N', () => {
    expect(meganewtons(1e6)).toBeCloseTo(4.4482216, 7);
  });
});
test('28 lb/ft3 of a Universal Density bale is 449 kg/m3', () => {
  const { lbPerCubicFoot, kgPerCubicMetre } = universalDensity(kilogramsFromPounds(28 * 17));
  expect(lbPerCubicFoot).toBeCloseTo(28, 9);
  expect(kgPerCubicMetre).toBeCloseTo(448.5, 1);
});
