import { describe, expect, test } from 'vitest';
import { foreignMatterFraction, isPoorCrop, takenAlongKg } from '../../../src/model/harvest/foreign-matter.ts';
import { groupDryKg } from '../../../src/model/lot.ts';

describe('foreign matter', () => {
  test.each([
    ['hand', 0.025, 0.01, 0.05],
    ['spindle', 0.08, 0.045, 0.15],
    ['stripper', 0.36, 0.25, 0.4],
  ] as const)('%s: an ordinary crop near %f, any crop from %f to %f', (method, ordinary, low, high) => {
    const yields = { hand: 200, spindle: 900, stripper: 357 };
    expect(Math.abs(foreignMatterFraction(method, 0.2, yields[method]) / ordinary - 1)).toBeLessThan(0.05);
    for (const leaf of [0, 0.5, 1]) {
      for (const lintLb of [0, 300, 900, 3000]) {
        const fraction = foreignMatterFraction(method, leaf, lintLb);
        expect(fraction).toBeGreaterThanOrEqual(low);
        expect(fraction).toBeLessThanOrEqual(high);
      }
    }
  });
  test('more leaf on the plant, more in the cotton; a poor crop takes more trash for each pound', () => {
    for (const method of ['hand', 'spindle', 'stripper'] as const)
      expect(foreignMatterFraction(method, 0.6, 500)).toBeGreaterThan(foreignMatterFraction(method, 0.1, 500));
    for (const method of ['spindle', 'stripper'] as const)
      expect(foreignMatterFraction(method, 0.2, 300)).toBeGreaterThan(foreignMatterFraction(method, 0.2, 900));
  });
  test('a field cleaner meets what the stripper took', () => {
    expect(foreignMatterFraction('stripperFieldCleaner', 0.3, 400)).toBe(foreignMatterFraction('stripper', 0.3, 400));
    expect(isPoorCrop('stripperFieldCleaner', 300)).toBe(true);
    expect(isPoorCrop('stripper', 450)).toBe(false);
  });
});

describe('what is taken along', () => {
  test('fills the foreign matter up to the wanted fraction, motes counted in', () => {
    const along = takenAlongKg('spindle', 0.08, 920, 9.6);
    const trashKg = groupDryKg(along, 'trash') + 9.6;
    expect(trashKg / (920 + trashKg)).toBeCloseTo(0.08, 12);
    expect(along.motes).toBe(0);
    expect(along.leaf / along.burs).toBeCloseTo(0.45 / 0.25, 12);
  });
  test('more motes than the fraction leave nothing to take', () => {
    expect(groupDryKg(takenAlongKg('hand', 0.02, 980, 40), 'trash')).toBe(0);
  });
});
