import { describe, expect, test } from 'vitest';
import { readFibre } from '../../../src/model/fibre.ts';
import {
  cleanLint,
  lintCleanedFibre,
  lintCleanerRemoval,
  lintLostFraction,
  removeWasteFibre,
  wasteByGridBarsLb,
} from '../../../src/model/gin/lint-cleaner.ts';
import { totalLengthMm } from '../../../src/model/length/length-distribution.ts';
import { meanLengthMm } from '../../../src/model/length/statistics.ts';
import { delivered, fibreOf } from './hand-made-lot.ts';

const lint = delivered({ method: 'spindle', foreignMatter: 0.05, lintShare: 0.999 });

describe('lint lost', () => {
  test('falls from the first saw cleaner to the third; gentler kinds lose less', () => {
    const saws = ([1, 2, 3] as const).map((stage) => lintLostFraction('saw', stage));
    expect(saws).toEqual([0.02, 0.012, 0.009]);
    expect(lintLostFraction('roller', 1)).toBeLessThan(saws[2]!);
    expect(lintLostFraction('air', 1)).toBeLessThan(lintLostFraction('roller', 1));
  });
  test('is the mass taken out of the distribution', () => {
    const { lengths } = fibreOf('medium');
    for (const lost of [0.004, 0.02, 0.1]) {
      const { removedFraction, kept, removed } = removeWasteFibre(lengths, lost);
      expect(removedFraction).toBeCloseTo(lost, 9);
      expect(totalLengthMm(kept)).toBeCloseTo(1, 12);
      expect(meanLengthMm(removed, 'weight')).toBeLessThan(meanLengthMm(kept, 'weight'));
    }
  });
});

describe('trash', () => {
  test('goes less in each further cleaner, and less when damp', () => {
    const leaf = (stage: 1 | 2 | 3, moisture: number) => lintCleanerRemoval('saw', stage, moisture).leaf!;
    expect(leaf(1, 6)).toBeCloseTo(0.4, 12);
    expect(leaf(2, 6)).toBeCloseTo(0.3, 12);
    expect(leaf(3, 6)).toBeCloseTo(0.22, 12);
    expect(leaf(1, 8)).toBeLessThan(leaf(1, 6));
    expect(leaf(1, 4)).toBeGreaterThan(leaf(1, 6));
  });
});

describe('fibre', () => {
  const medium = fibreOf('medium');
  const behind = (kind: 'saw' | 'roller' | 'air', moisture = 6) =>
    readFibre(lintCleanedFibre(medium, kind, 1, moisture));
  test('is shortened by saws, half as much by rollers, not by air', () => {
    const fall = (kind: 'saw' | 'roller' | 'air') =>
      readFibre(medium).uniformityPercent - behind(kind).uniformityPercent;
    expect(fall('air')).toBe(0);
    expect(fall('saw')).toBeGreaterThan(fall('roller'));
    expect(fall('roller')).toBeGreaterThan(0);
  });
  test('suffers more when dry, and more where it breaks easily', () => {
    expect(behind('saw', 4).upperHalfMeanMm).toBeLessThan(behind('saw', 7).upperHalfMeanMm);
    const tough = readFibre(lintCleanedFibre({ ...medium, breakTendency: 0.7 }, 'saw', 1, 6));
    expect(tough.upperHalfMeanMm).toBeGreaterThan(behind('saw').upperHalfMeanMm);
  });
  test('keeps its own colour: cleaned lint reads brighter only because less trash darkens it', () => {
    expect(lintCleanedFibre(medium, 'saw', 1, 6).reflectanceRd).toBe(medium.reflectanceRd);
  });
});

test('a step takes what its table says and no seed cotton account but its own', () => {
  const { in: before, out, removed } = cleanLint(lint, 'saw', 1);
  expect(removed.map(({ account }) => account)).toEqual(['lintCleanerWaste']);
  expect(out.dryKg.lint / before.dryKg.lint).toBeCloseTo(0.98, 12);
  expect(out.dryKg.leaf / before.dryKg.leaf).toBeCloseTo(0.6, 12);
});

test('every further grid bar adds less waste', () => {
  const waste = [0, 1, 2, 3, 4, 5].map(wasteByGridBarsLb);
  const steps = waste.slice(1).map((lb, index) => lb - waste[index]!);
  expect(waste[0]).toBe(0);
  expect(steps).toEqual([...steps].sort((a, b) => b - a));
});
