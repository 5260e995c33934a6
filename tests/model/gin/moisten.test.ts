import { expect, test } from 'vitest';
import { lintMoisturePercent, moistenLint, waterToAdd } from '../../../src/model/gin/moisten.ts';
import { totalWaterKg } from '../../../src/model/lot.ts';
import { delivered } from './hand-made-lot.ts';

const lot = delivered({ method: 'spindle', foreignMatter: 0.03, lintShare: 0.999, moisturePercent: 5 });

test('lint comes to the moisture wanted, and the ledger holds the water', () => {
  const step = moistenLint('lintSlide', lot, 7);
  expect(lintMoisturePercent(step.out)).toBeCloseTo(7, 9);
  expect(totalWaterKg(step.added[0]!.masses.waterKg)).toBeCloseTo(
    totalWaterKg(step.out.waterKg) - totalWaterKg(step.in.waterKg),
    6,
  );
  expect(step.out.dryKg).toEqual(lot.dryKg);
});
test('lint that is damper already passes unchanged', () => {
  const step = moistenLint('lintSlide', lot, 4);
  expect(step.out.waterKg).toEqual(lot.waterKg);
  expect(totalWaterKg(step.added[0]!.masses.waterKg)).toBe(0);
  expect(waterToAdd(500, 7, 5)).toBe(0);
});
test('the rule and the step agree', () => {
  const before = lot.dryKg.lint + lot.waterKg.lint;
  expect(waterToAdd(before, 5, 7)).toBeCloseTo(moistenLint('x', lot, 7).added[0]!.masses.waterKg.lint, 6);
});
