import { describe, expect, test } from 'vitest';
import { benchOutcome } from '../../../src/model/bench/outcomes.ts';
import { inputOf, sweepInputs, sweepPlace, sweepSetUps } from '../../../src/model/bench/sweep.ts';
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
