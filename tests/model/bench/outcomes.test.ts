import { expect, test } from 'vitest';
import { benchDifferences, benchOutcome, benchOutcomeKeys } from '../../../src/model/bench/outcomes.ts';
import { startingSetUp } from '../../../src/model/bench/set-up.ts';
import { workBench } from '../../../src/model/bench/work-bench.ts';
import { pimaBench, quiltingBench } from './benches.ts';

test('a bench beside itself differs in nothing', () => {
  expect(benchDifferences(quiltingBench, quiltingBench, 0)).toEqual([]);
});

test('the largest difference is told first, and each is its own two numbers', () => {
  const told = benchDifferences(quiltingBench, pimaBench, 0.02);
  expect(told.length).toBeGreaterThan(3);
  for (const { key, before, after, share } of told) {
    expect(before).toBe(benchOutcome(key, quiltingBench));
    expect(after).toBe(benchOutcome(key, pimaBench));
    expect(share).toBeCloseTo((after - before) / before, 12);
  }
  const sizes = told.map(({ share }) => Math.abs(share));
  expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
});

test('a knit has no threads to count, and woven quilting cotton has every outcome', () => {
  expect(benchOutcome('threadCount', workBench(startingSetUp('pima', 'jersey', 14)))).toBeNull();
  for (const key of benchOutcomeKeys) expect(benchOutcome(key, quiltingBench), key).not.toBeNull();
});
