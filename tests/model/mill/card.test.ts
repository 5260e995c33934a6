import { expect, test } from 'vitest';
import { uniformLength } from '../../../src/model/length/length-distribution.ts';
import { shareBelow } from '../../../src/model/length/statistics.ts';
import { card } from '../../../src/model/mill/card.ts';
import { mediumFibre } from './lint-lot.ts';

test('takes exactly 4 % of the lint and opens nine neps in ten', () => {
  const { fibre, removedFraction } = card(mediumFibre);
  expect(removedFraction).toBeCloseTo(0.04, 12);
  expect(fibre.nepsRatio).toBeCloseTo(0.3, 12);
});

test('takes short fibre before long', () => {
  const { fibre } = card(mediumFibre);
  expect(shareBelow(fibre.lengths, 4, 'number')).toBeLessThan(0.4 * shareBelow(mediumFibre.lengths, 4, 'number'));
});

test('lint too short for carding loses more than 4 %, never all', () => {
  const { removedFraction } = card({ ...mediumFibre, lengths: uniformLength(3) });
  expect(removedFraction).toBeGreaterThan(0.5);
  expect(removedFraction).toBeLessThan(1);
});

test('stronger cotton breaks less', () => {
  const longer = card({ ...mediumFibre, breakTendency: 0.5 });
  expect(shareBelow(longer.fibre.lengths, 20, 'number')).toBeLessThan(
    shareBelow(card(mediumFibre).fibre.lengths, 20, 'number'),
  );
});
