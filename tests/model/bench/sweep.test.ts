import { describe, expect, test } from 'vitest';
import { benchOutcome } from '../../../src/model/bench/outcomes.ts';
import { cardOf } from '../../../src/model/bench/set-up.ts';
import { inputOf, sweepInputs, sweepPlace, sweepSetUps } from '../../../src/model/bench/sweep.ts';
import { workBench } from '../../../src/model/bench/work-bench.ts';
import { quiltingBench, quiltingSetUp } from './benches.ts';

describe.each(sweepInputs)('a sweep of %s', (input) => {
  const places = sweepSetUps(quiltingSetUp, input)
    .filter((_, at) => at % 4 === 0)
    .map((setUp) => sweepPlace(setUp, input));
  test('goes along its axis one way', () => {
    const at = places.map((place) => place.at);
    const rising = at[0]! < at.at(-1)!;
    expect(at).toEqual([...at].sort((a, b) => (rising ? a - b : b - a)));
  });
});

test('a longer staple brings a finer yarn into reach, all else alike', () => {
  const finest = sweepSetUps(quiltingSetUp, 'staple')
    .filter((_, at) => at % 4 === 0)
    .map((setUp) => benchOutcome('finestNe', sweepPlace(setUp, 'staple').bench)!);
  for (let i = 1; i < finest.length; i++) expect(finest[i]).toBeGreaterThanOrEqual(finest[i - 1]!);
});

test('a bench stands on each axis where its own input says', () => {
  expect(inputOf(quiltingBench, 'staple')).toBe(quiltingSetUp.card.lengthIn);
  expect(inputOf(quiltingBench, 'count')).toBeCloseTo(28, 9);
});

test('bales laid together are swept as one card that reads as their mix', () => {
  const laid = { ...quiltingSetUp, bales: [480, 510].map((netLb) => ({ ...cardOf('pima'), netLb })) };
  const [first] = sweepSetUps(laid, 'micronaire');
  expect(first?.bales).toEqual([]);
  expect(first?.card.kind).toBe('pima');
  expect(first?.card.lengthIn).toBeCloseTo(cardOf('pima').lengthIn, 1);
  expect(sweepSetUps(laid, 'count')[0]?.bales).toHaveLength(2);
  expect(inputOf(workBench(laid), 'micronaire')).toBeCloseTo(cardOf('pima').micronaire, 9);
});
