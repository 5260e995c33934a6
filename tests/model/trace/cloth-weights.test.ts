import { expect, test } from 'vitest';
import { workBench } from '../../../src/model/bench/work-bench.ts';
import { catalogue } from '../../../src/model/cloth/catalogue-facts.ts';
import { clothNames, clothOunces } from '../../../src/model/trace/cloth-weights.ts';
import { ouncesPerSquareYardFromGsm } from '../../../src/model/units.ts';
import { plainSetUp } from '../../../src/statechart/saved-bench.ts';

test('named cloths have weights, other words have none', () => {
  expect(clothNames).toContain('denim');
  expect(clothOunces('denim')).toBeCloseTo(11.2, 1);
  expect(clothOunces('toString')).toBeUndefined();
});
test.each([
  ['poplin', 110, 160],
  ['percale', 100, 150],
  ['jersey', 140, 200],
  ['denim', 200, 400],
  ['duckTen', 300, 500],
])('%s weighs %d to %d g/m2 (ranges by end use, a seller’s chart, aaenterprises.in)', (name, low, high) => {
  expect(clothOunces(name)).toBeGreaterThanOrEqual(ouncesPerSquareYardFromGsm(low));
  expect(clothOunces(name)).toBeLessThanOrEqual(ouncesPerSquareYardFromGsm(high));
});

test('a named cloth weighs here what it weighs on the bench', () => {
  expect(clothNames).toEqual(Object.keys(catalogue));
  for (const name of ['quilting', 'denim', 'duckEight', 'jersey', 'interlock'] as const)
    expect(clothOunces(name)).toBe(workBench(plainSetUp('pima', name)).cloth.description.ouncesPerSquareYard);
});
