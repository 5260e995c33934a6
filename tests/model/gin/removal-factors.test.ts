import { describe, expect, test } from 'vitest';
import { cleaningMoistureFactor, removalUnder } from '../../../src/model/gin/removal-factors.ts';

const usual = { lintMoisturePercent: 6, leafFactor: 1, loadingBalesPerHourFoot: 2 };
const table = { burs: 0.5, leaf: 0.2, dirt: 0.9, lint: 0.004, seed: 0.002 };

test('wetter cotton keeps more trash, within limits — Laird, Beltwide 2228, in kind', () => {
  const factors = [0, 4, 6, 8, 20].map(cleaningMoistureFactor);
  expect(factors).toEqual([1.2, expect.closeTo(1.1, 12), 1, expect.closeTo(0.9, 12), 0.7]);
});
describe('removal', () => {
  test('at usual conditions is the table', () => {
    expect(removalUnder(table, usual)).toMatchObject(table);
  });
  test('of dry leaf is higher, of nothing ever whole', () => {
    expect(removalUnder(table, { ...usual, leafFactor: 1.5 }).leaf).toBeCloseTo(0.3, 12);
    expect(removalUnder(table, { ...usual, lintMoisturePercent: 2 }).dirt).toBe(0.95);
  });
  test('in a crowded machine is lower, with more cotton lost', () => {
    const crowded = removalUnder(table, { ...usual, loadingBalesPerHourFoot: 3.5 });
    expect(crowded.burs).toBeCloseTo(0.475, 12);
    expect(crowded.lint).toBeCloseTo(0.0056, 12);
  });
});
