import { describe, expect, test } from 'vitest';
import { flowersKept, heatKept, loadKept, positionsAtStand, waterKept } from '../../../src/model/field/retention.ts';
import { varietyOf } from '../../../src/model/field/varieties.ts';

const { positions } = varietyOf('uplandMedium', 'present');

describe('what a plant keeps', () => {
  test('less and less as its load grows', () => {
    expect(loadKept(0)).toBeGreaterThan(0.99);
    expect(loadKept(0.8)).toBeCloseTo(0.5, 12);
    expect(loadKept(1.2)).toBeLessThan(0.05);
  });
  test('less in warm nights and very hot days, never less than the floor', () => {
    expect(heatKept(86, 68)).toBe(1);
    expect(heatKept(96, 78)).toBeLessThan(1);
    expect(heatKept(130, 110)).toBe(0.3);
  });
  test('less in drought, never nothing', () => {
    expect(waterKept(1)).toBe(1);
    expect(waterKept(0)).toBe(0.4);
  });
  test('never every flower', () => {
    expect(flowersKept({ sites: 1, squaresKept: 1, flowersKept: 2 }, 0, 1, 1)).toBe(0.97);
  });
});

describe('the stand', () => {
  test('at the reference stand the positions are the variety’s own', () => {
    expect(positionsAtStand(positions, 40000)).toEqual(positions);
  });
  test('thin stands fill outer positions and vegetative branches, thick ones do not; the first position is the same', () => {
    const thin = positionsAtStand(positions, 15000);
    const thick = positionsAtStand(positions, 90000);
    expect(thin[0]).toEqual(thick[0]);
    for (const place of [1, 2]) expect(thin[place]!.flowersKept).toBeGreaterThan(thick[place]!.flowersKept);
    expect(thin[3]!.sites).toBeGreaterThan(thick[3]!.sites);
  });
  test('there is a limit to both', () => {
    const alone = positionsAtStand(positions, 500);
    expect(alone[1]!.flowersKept).toBe(0.85);
    expect(alone[3]!.sites).toBe(1.6);
  });
});
