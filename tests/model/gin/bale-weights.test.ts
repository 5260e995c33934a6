import { describe, expect, test } from 'vitest';
import { baleWeightsKg } from '../../../src/model/gin/bale-weights.ts';
import { openStream } from '../../../src/model/random.ts';
import { kilogramsFromPounds, poundsFromKilograms } from '../../../src/model/units.ts';

const weights = (totalLb: number, seed = 3) =>
  baleWeightsKg(kilogramsFromPounds(totalLb), kilogramsFromPounds(480), openStream(seed, 'press')).map(
    poundsFromKilograms,
  );

describe('bale weights', () => {
  test('add up to the lot', () => {
    for (const total of [479, 1000, 12_345, 480_000])
      expect(weights(total).reduce((sum, lb) => sum + lb, 0) / total).toBeCloseTo(1, 12);
  });
  test('as many as come nearest, at least one', () => {
    expect(weights(12_000)).toHaveLength(25);
    expect(weights(12_230)).toHaveLength(25);
    expect(weights(12_250)).toHaveLength(26);
    expect(weights(60)).toEqual([expect.closeTo(60, 9)]);
  });
  test('a lot that cannot be shared out evenly makes whole bales and a light last one, never a bale of 652 lb', () => {
    for (const [total, whole, left] of [
      [652, 1, 172],
      [1100, 2, 140],
      [501, 1, null],
      [21, 0, 21],
      [820, 1, 340],
    ] as const) {
      const all = weights(total);
      const full = left === null ? all : all.slice(0, -1);
      expect(full, String(total)).toHaveLength(whole);
      for (const lb of full) expect(Math.abs(lb - 480)).toBeLessThan(0.05 * 480 + 8);
      if (left !== null) expect(all.at(-1)).toBeCloseTo(left, 6);
      expect(all.reduce((sum, lb) => sum + lb, 0)).toBeCloseTo(total, 6);
    }
  });
  test('lie within some pounds of the wanted weight and are not all alike', () => {
    const many = weights(480 * 500);
    expect(Math.max(...many)).toBeLessThan(490);
    expect(Math.min(...many)).toBeGreaterThan(470);
    const sd = Math.sqrt(many.reduce((sum, lb) => sum + (lb - 480) ** 2, 0) / many.length);
    expect(sd).toBeGreaterThan(3);
    expect(sd).toBeLessThan(5);
  });
  test('come again from the same seed only', () => {
    expect(weights(12_000, 5)).toEqual(weights(12_000, 5));
    expect(weights(12_000, 5)).not.toEqual(weights(12_000, 6));
  });
});
