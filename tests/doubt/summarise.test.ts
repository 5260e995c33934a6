import { median } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { quantileOf, quantileShares, summarise } from '../../src/doubt/summarise.ts';

describe('quantiles', () => {
  // Hyndman & Fan 1996, definition 7: the k-th of n values in order lies at (k - 1) / (n - 1).
  test.each([
    [[1, 2, 3, 4, 5], 0.25, 2],
    [[1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.25, 3.25],
    [[1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.95, 9.55],
    [[10, 20], 0.05, 10.5],
    [[7], 0.95, 7],
    [[3, 9], 0, 3],
    [[3, 9], 1, 9],
  ])('of %j at %d is %d — Hyndman & Fan 1996, definition 7', (values, share, expected) => {
    expect(quantileOf(values, share)).toBeCloseTo(expected, 12);
  });
  test('the middle one is the median of simple-statistics, odd or even', () => {
    for (const values of [
      [9, 1, 4],
      [9, 1, 4, 6],
      [2, 2, 5, 1, 8, 8],
    ])
      expect(summarise(values)!.quantiles[2]).toBe(median(values));
  });
  test('rise with their shares', () => {
    const { quantiles } = summarise(Array.from({ length: 97 }, (_, i) => (i * 37) % 97))!;
    expect(quantiles).toHaveLength(quantileShares.length);
    expect([...quantiles].sort((a, b) => a - b)).toEqual(quantiles);
  });
});

describe('bins', () => {
  test('hold every value once, from least to most', () => {
    const values = Array.from({ length: 101 }, (_, i) => i / 10);
    const { bins, count, least, most } = summarise(values, 10)!;
    expect(bins).toHaveLength(10);
    expect(bins.reduce((sum, bin) => sum + bin.count, 0)).toBe(count);
    expect([bins[0]!.low, bins.at(-1)!.high]).toEqual([least, most]);
    // Ten values a bin; the last one also holds the most.
    expect(bins.map((bin) => bin.count)).toEqual([10, 10, 10, 10, 10, 10, 10, 10, 10, 11]);
  });
  test('of equal values are one heap', () => {
    const summary = summarise([4, 4, 4], 5)!;
    expect(summary.bins[0]).toEqual({ low: 4, high: 4, count: 3 });
    expect(summary.quantiles).toEqual([4, 4, 4, 4, 4]);
  });
  test('no value, no summary', () => {
    expect(summarise([])).toBeNull();
  });
});
