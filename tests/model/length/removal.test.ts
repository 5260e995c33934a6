import { describe, expect, test } from 'vitest';
import {
  gaussianByMass,
  lengthAtMm,
  lengthCount,
  totalLengthMm,
} from '../../../src/model/length/length-distribution.ts';
import { removeByLength, solveRemoval } from '../../../src/model/length/removal.ts';
import { meanLengthMm } from '../../../src/model/length/statistics.ts';

const peak = gaussianByMass(25, 0.3);
const waste = (lengthMm: number, size: number) => size * (0.03 + Math.exp(-lengthMm / 6));

test('kept and removed, put back in their shares of the mass, are what there was', () => {
  const { kept, removed, removedFraction } = removeByLength(peak, (l) => Math.exp(-l / 10));
  for (let i = 0; i < lengthCount; i++) {
    expect(kept[i]! * (1 - removedFraction) + removed[i]! * removedFraction).toBeCloseTo(peak[i]!, 12);
  }
  expect(totalLengthMm(kept)).toBeCloseTo(1, 12);
  expect(meanLengthMm(removed, 'number')).toBeLessThan(meanLengthMm(kept, 'number'));
});

test('a chance beyond 0 and 1 counts as 0 and 1', () => {
  const { kept, removed } = removeByLength(peak, (l) => (l < 20 ? 7 : -3));
  for (let i = 0; i < lengthCount; i++) expect(lengthAtMm(i) < 20 ? kept[i] : removed[i]).toBe(0);
});

test('taking all or nothing is an error', () => {
  expect(() => removeByLength(peak, () => 1)).toThrow(RangeError);
  expect(() => removeByLength(peak, () => 0)).toThrow(RangeError);
});

describe('the solved removal takes the wanted share of the mass', () => {
  test.each([0.001, 0.009, 0.02, 0.2])('%d', (wanted) => {
    const size = solveRemoval(peak, waste, wanted, [0, 40]);
    expect(removeByLength(peak, (l) => waste(l, size)).removedFraction).toBeCloseTo(wanted, 9);
  });
});
