import { describe, expect, test } from 'vitest';
import {
  cropCoefficient,
  cropGddC,
  extraterrestrialRadiation,
  referenceEtMm,
  type SoilWater,
  stepSoilWater,
  waterSupply,
} from '../../../src/model/field/water.ts';

describe('sunshine and thirst', () => {
  test('June is brighter than December in the north, and the pole is dark in winter', () => {
    expect(extraterrestrialRadiation(33, 172)).toBeGreaterThan(2 * extraterrestrialRadiation(33, 355));
    expect(extraterrestrialRadiation(85, 355)).toBeCloseTo(0, 6);
  });
  test('a July day in the Delta asks for some 5 to 7 mm', () => {
    const et = referenceEtMm(92, 72, extraterrestrialRadiation(33.4, 196));
    expect(et).toBeGreaterThan(5);
    expect(et).toBeLessThan(7);
  });
  test('degree-days for the crop coefficient are cut at 30 and 12.5 °C', () => {
    expect(cropGddC(86, 54.5)).toBeCloseTo(cropGddC(110, 30), 12);
    expect(cropGddC(50, 40)).toBe(0);
  });
  test('the crop coefficient stays above bare soil and does not turn negative at the end', () => {
    expect(cropCoefficient(0)).toBe(0.2);
    for (let g = 0; g < 4000; g += 50) expect(cropCoefficient(g)).toBeGreaterThanOrEqual(0.2);
    expect(cropCoefficient(2500)).toBe(0.5);
  });
  test('a crop drinks freely until 65 % of the water is gone', () => {
    expect(waterSupply(36, 100)).toBe(1);
    expect(waterSupply(17.5, 100)).toBeCloseTo(0.5, 12);
    expect(waterSupply(0, 100)).toBe(0);
  });
});

describe('a day of soil water', () => {
  const soil = (waterMm: number): SoilWater => ({
    capacityMm: 100,
    effectiveRainFraction: 0.8,
    waterMm,
    irrigationLeftMm: 30,
    gddC: 900,
    neededMm: 0,
    usedMm: 0,
    irrigatedMm: 0,
  });
  const hot = { maxF: 95, minF: 70, rainInches: 0, radiation: 40 };

  test('what goes in less what goes out is what is left', () => {
    const field = soil(30);
    const day = stepSoilWater(field, { ...hot, rainInches: 0.5 }, true, true);
    expect(field.waterMm).toBeCloseTo(30 + 0.8 * 12.7 + day.irrigatedMm - field.usedMm, 10);
    expect(field.irrigatedMm + field.irrigationLeftMm).toBe(30);
  });
  test('water is given when the crop begins to thirst, an inch at a time, up to the cap', () => {
    const wet = soil(90);
    expect(stepSoilWater(wet, hot, true, true).irrigatedMm).toBe(0);
    const dry = soil(20);
    expect(stepSoilWater(dry, hot, true, true).irrigatedMm).toBe(25);
    dry.waterMm = 10;
    expect(stepSoilWater(dry, hot, true, true).irrigatedMm).toBe(5);
    dry.waterMm = 10;
    expect(stepSoilWater(dry, hot, true, true).irrigatedMm).toBe(0);
  });
  test('no water is given in winter or after the cut-off', () => {
    expect(stepSoilWater(soil(5), hot, false, true).irrigatedMm).toBe(0);
    expect(stepSoilWater(soil(5), hot, true, false).irrigatedMm).toBe(0);
  });
  test('the soil neither overflows nor runs below empty', () => {
    const field = soil(99);
    stepSoilWater(field, { ...hot, rainInches: 9 }, true, false);
    expect(field.waterMm).toBe(100);
    for (let day = 0; day < 400; day++) stepSoilWater(field, hot, true, false);
    expect(field.waterMm).toBeGreaterThanOrEqual(0);
  });
});
