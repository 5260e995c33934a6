import { describe, expect, test } from 'vitest';
import {
  addMasses,
  groupDryKg,
  moistureFraction,
  partMasses,
  parts,
  scaleMasses,
  splitLot,
  totalDryKg,
  totalKg,
  totalWaterKg,
  trashParts,
  waterForMoisture,
  waterGroupOf,
  waterGroups,
} from '../../src/model/lot.ts';
import { pickedLot } from './lots.ts';

const lot = pickedLot();

test('parts that are not named weigh nothing', () => {
  expect(partMasses({ lint: 3 }).seed).toBe(0);
  expect(Object.keys(partMasses({}))).toEqual([...parts]);
});

test('totals are sums: dry 987 kg, water 97 kg', () => {
  expect(totalDryKg(lot.dryKg)).toBe(987);
  expect(totalWaterKg(lot.waterKg)).toBe(97);
  expect(totalKg(lot)).toBe(1084);
});

test('every part has a water group, and foreign matter the one of trash', () => {
  expect(trashParts.map(waterGroupOf)).toEqual(trashParts.map(() => 'trash'));
  expect(waterGroups.reduce((sum, group) => sum + groupDryKg(lot.dryKg, group), 0)).toBeCloseTo(987, 12);
});

describe('moisture, wet basis', () => {
  test('24 kg of water in 340 kg of dry lint is 6.593 %', () => {
    expect(moistureFraction(lot, 'lint')).toBeCloseTo(24 / 364, 12);
  });
  test('of a group with nothing in it is zero', () => {
    expect(moistureFraction({ dryKg: partMasses({}), waterKg: { lint: 0, seed: 0, trash: 0 } }, 'seed')).toBe(0);
  });
  test.each([0.04, 0.08, 0.12])('water for %d gives that moisture back', (fraction) => {
    const water = { lint: waterForMoisture(340, fraction), seed: 0, trash: 0 };
    expect(moistureFraction({ dryKg: lot.dryKg, waterKg: water }, 'lint')).toBeCloseTo(fraction, 12);
  });
});

describe('a split', () => {
  const { kept, removed } = splitLot(lot, { burs: 0.5, leaf: 0.25, lint: 0.01 });
  test('takes the named fractions, and nothing of the parts not named', () => {
    expect(removed.dryKg.burs).toBe(20);
    expect(removed.dryKg.leaf).toBe(5);
    expect(removed.dryKg.seed).toBe(0);
    expect(kept.dryKg.lint).toBeCloseTo(336.6, 12);
  });
  test('lets the water go with its dry mass, equally damp on both sides', () => {
    for (const group of ['lint', 'trash'] as const) {
      expect(moistureFraction(kept, group)).toBeCloseTo(moistureFraction(lot, group), 12);
      expect(moistureFraction(removed, group)).toBeCloseTo(moistureFraction(lot, group), 12);
    }
    expect(removed.waterKg.seed).toBe(0);
  });
  test('of everything leaves nothing, not even water', () => {
    const all = splitLot(lot, Object.fromEntries(parts.map((part) => [part, 1])));
    expect(totalKg(all.kept)).toBe(0);
    expect(all.removed).toEqual({ dryKg: lot.dryKg, waterKg: lot.waterKg });
  });
});

test('adding and scaling go part by part and group by group', () => {
  const double = addMasses(lot, lot);
  expect(double).toEqual(scaleMasses(lot, 2));
  expect(totalKg(double)).toBe(2168);
});
