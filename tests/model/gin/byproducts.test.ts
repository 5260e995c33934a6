import { describe, expect, test } from 'vitest';
import { summariseGin } from '../../../src/model/gin/byproducts.ts';
import { massEntry } from '../../../src/model/ledger.ts';
import { partMasses } from '../../../src/model/lot.ts';

const masses = (some: Parameters<typeof partMasses>[0], water = 0) => ({
  dryKg: partMasses(some),
  waterKg: { lint: water, seed: 0, trash: 0 },
});
const cleaning = {
  in: [massEntry('lot', masses({ lint: 400, seed: 560 }, 40))],
  out: [massEntry('ginTrash', masses({ burs: 30 }, 10))],
};
const ginning = {
  in: [],
  out: [
    massEntry('seedHouse', masses({ seed: 500 })),
    massEntry('ginTrash', masses({ leaf: 10 })),
    massEntry('lintCleanerWaste', masses({ lint: 10, leaf: 10 })),
  ],
};
const pressing = { in: [], out: [massEntry('lot', masses({ lint: 380 }, 20))] };

describe('per bale', () => {
  const summary = summariseGin(cleaning, ginning, pressing);
  test('counts water with the dry matter', () => {
    expect(summary.turnout).toBeCloseTo(0.4, 12);
    expect(summary.seedCottonLbPer480LbBale).toBeCloseTo(1200, 9);
  });
  test('counts seed and both wastes', () => {
    expect(summary.seedLbPer480LbBale).toBeCloseTo(600, 9);
    expect(summary.seedLbPer500LbBale).toBeCloseTo(625, 9);
    expect(summary.wasteLbPer480LbBale).toBeCloseTo(84, 9);
    expect(summary.wasteLbPer500LbBale).toBeCloseTo(87.5, 9);
    expect(summary.lintCleanerWasteLbPer500LbBale).toBeCloseTo(25, 9);
  });
  test('needs a bale', () => {
    expect(() => summariseGin(cleaning, ginning, { in: [], out: [] })).toThrow(RangeError);
  });
});
