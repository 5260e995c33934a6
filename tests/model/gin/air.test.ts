import { describe, expect, test } from 'vitest';
import { heatedHumidity, lintRegain, saturationKPa, wetBasisFromRegain } from '../../../src/model/gin/air.ts';

describe('regain of lint', () => {
  test.each([
    [0.1, 2.6],
    [0.2, 3.7],
    [0.3, 4.4],
    [0.4, 5.2],
    [0.5, 5.9],
    [0.6, 6.8],
    [0.7, 8.1],
    [0.8, 10],
    [0.9, 14.3],
  ])('at humidity %f is %f %% within 0.35 — ASHRAE industrial table, American cloth', (humidity, percent) => {
    expect(Math.abs(100 * lintRegain(humidity) - percent)).toBeLessThanOrEqual(0.35);
  });
  test('is nothing in bone-dry air and finite in fog', () => {
    expect(lintRegain(0)).toBe(0);
    expect(Number.isFinite(lintRegain(1))).toBe(true);
  });
});
test('wet basis from regain: R / (1 + R)', () => {
  expect(wetBasisFromRegain(0.25)).toBe(0.2);
});
test('heating air dries it, and cooling is not asked of a dryer', () => {
  expect(heatedHumidity(70, 0.6, 120)).toBeLessThan(0.15);
  expect(heatedHumidity(70, 0.6, 70)).toBe(0.6);
  expect(heatedHumidity(70, 0.6, 50)).toBe(0.6);
});
test('water boils at about one atmosphere — 101.3 kPa at 100 C', () => {
  expect(Math.abs(saturationKPa(100) / 101.325 - 1)).toBeLessThan(0.03);
});
