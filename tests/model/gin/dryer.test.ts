import { describe, expect, test } from 'vitest';
import {
  dry,
  dryerEquilibrium,
  dryingMoisture,
  dryingRatePerSecond,
  heatBreakagePerMm,
} from '../../../src/model/gin/dryer.ts';
import { moistureFraction, totalWaterKg } from '../../../src/model/lot.ts';
import { delivered } from './hand-made-lot.ts';

const outside = { outsideF: 70, outsideHumidity: 0.6 };
const at = (moisturePercent: number) =>
  delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425, moisturePercent });
const pass = (moisture: number, airF: number, air = outside) => {
  const lot = at(moisture);
  return dry('dryer1', lot, lot.fibre, airF, air);
};

describe('drying', () => {
  test('goes exponentially to its end', () => {
    expect(dryingMoisture(20, 2, 0.1, 0)).toBe(20);
    expect(dryingMoisture(20, 2, 0.1, Math.LN2 / 0.1)).toBeCloseTo(11, 12);
    expect(dryingMoisture(20, 2, 0.1, 1e4)).toBeCloseTo(2, 12);
  });
  test('lint of damp seed cotton to 7.4 % in 14 s in air of 150-200 F — Hughs et al. 1985', () => {
    // Lint in seed cotton of 13 to 17.5 % holds about 10.4 to 14.1 %; the middle.
    expect(Math.abs(dryingMoisture(12.25, 2, dryingRatePerSecond(180), 14) - 7.4)).toBeLessThan(0.5);
  });
  test('ends at 1-2 % in hot air under 5 % humidity — psychrometrics, from memory', () => {
    const end = 100 * dryerEquilibrium(280, outside);
    expect(end).toBeGreaterThan(1);
    expect(end).toBeLessThan(2);
  });
});

describe('a pass', () => {
  test('keeps dry matter and gives the water to the air', () => {
    const step = pass(10, 180);
    expect(step.out.dryKg).toEqual(step.in.dryKg);
    const gone = totalWaterKg(step.removed[0]!.masses.waterKg);
    expect(gone + totalWaterKg(step.out.waterKg)).toBeCloseTo(totalWaterKg(step.in.waterKg), 6);
    expect(gone).toBeGreaterThan(0);
  });
  test('dries lint most, trash less, seed hardly — Laird & Barker 1995', () => {
    const { out } = pass(10, 180);
    expect(moistureFraction(out, 'lint')).toBeLessThan(moistureFraction(out, 'trash'));
    expect(moistureFraction(out, 'trash')).toBeLessThan(moistureFraction(out, 'seed'));
    expect(moistureFraction(out, 'seed')).toBeGreaterThan(0.099);
  });
  test('in hotter air takes more', () => {
    const left = [100, 180, 260, 350].map((airF) => moistureFraction(pass(10, airF).out, 'lint'));
    expect(left).toEqual([...left].sort((a, b) => b - a));
  });
  test('in air damper than the cotton does nothing', () => {
    const step = pass(4, 80, { outsideF: 75, outsideHumidity: 0.95 });
    expect(step.out.waterKg).toEqual(step.in.waterKg);
    expect(totalWaterKg(step.removed[0]!.masses.waterKg)).toBe(0);
  });
});

describe('heat', () => {
  test('up to 200 F harms nothing; above, most as it nears 350 F — Anthony 2004', () => {
    expect(heatBreakagePerMm(200)).toBe(0);
    const [low, high] = [heatBreakagePerMm(250), heatBreakagePerMm(350) - heatBreakagePerMm(300)];
    expect(low).toBeGreaterThan(0);
    expect(high).toBeGreaterThan(low);
  });
  test('breaks fibre, tough fibre less', () => {
    const lot = at(8);
    const broken = dry('dryer1', lot, lot.fibre, 350, outside).fibreAfter;
    const tough = dry('dryer1', lot, { ...lot.fibre, breakTendency: 0.7 }, 350, outside).fibreAfter;
    const count = (lengths: Readonly<Float64Array>) => lengths.reduce((sum, n) => sum + n, 0);
    expect(count(broken.lengths)).toBeGreaterThan(count(tough.lengths));
    expect(count(tough.lengths)).toBeGreaterThan(count(lot.fibre.lengths));
    expect(dry('dryer1', lot, lot.fibre, 180, outside).fibreAfter).toBe(lot.fibre);
  });
});
