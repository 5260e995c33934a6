import { expect, test } from 'vitest';
import { bollsInPounds, poiseInches } from '../../src/lessons/steelyard.ts';
import { steelyardFacts } from '../../src/model/harvest/labour-facts.ts';

test('the moments of load and poise are equal (law of the lever, Archimedes, On the Equilibrium of Planes)', () => {
  for (const load of [1, 10, 62.5, 100])
    expect(poiseInches(load) * steelyardFacts.poiseLb.value).toBeCloseTo(load * steelyardFacts.hookArmIn.value, 12);
});

test('textbook example: 100 lb at 2 in is held by 10 lb at 20 in', () => {
  expect(poiseInches(100)).toBeCloseTo(20, 12);
});

test('a pound is sixty to eighty bolls (Phillips 1918, ch. 12), so a boll holds 5.7 to 7.6 g', () => {
  const { fewest, most } = bollsInPounds(10);
  expect(4535.9237 / fewest).toBeCloseTo(7.56, 2);
  expect(4535.9237 / most).toBeCloseTo(5.67, 2);
});
