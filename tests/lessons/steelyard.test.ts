import { expect, test } from 'vitest';
import { poiseInches } from '../../src/lessons/steelyard.ts';
import { steelyardFacts } from '../../src/model/harvest/labour-facts.ts';

test('the moments of load and poise are equal (law of the lever, Archimedes, On the Equilibrium of Planes)', () => {
  for (const load of [1, 10, 62.5, 100])
    expect(poiseInches(load) * steelyardFacts.poiseLb.value).toBeCloseTo(load * steelyardFacts.hookArmIn.value, 12);
});

test('textbook example: 100 lb at 2 in is held by 10 lb at 20 in', () => {
  expect(poiseInches(100)).toBeCloseTo(20, 12);
});
