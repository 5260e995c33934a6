import { expect, test } from 'vitest';
import { removedInAllRounds } from '../../../src/model/gin/overflow.ts';
import { emptyHopper, type HopperState, stepHopper } from '../../../src/model/gin/overflow-steps.ts';

const balance = ({ fedKg, toFeedersKg, removedKg, hopperKg }: HopperState) =>
  (toFeedersKg + removedKg + hopperKg) / fedKg - 1;

test('every moment balances, and the hopper settles', () => {
  let state = emptyHopper;
  let before = state;
  for (let step = 0; step < 2000; step++) {
    before = state;
    state = stepHopper(state, 10, 0.1, 0.05, 0.2);
    expect(Math.abs(balance(state))).toBeLessThan(1e-12);
  }
  // Steady: each step feeds and removes as the closed form says.
  expect(state.hopperKg).toBeCloseTo(before.hopperKg, 9);
  expect((state.removedKg - before.removedKg) / 10).toBeCloseTo(removedInAllRounds(0.1, 0.05), 9);
  expect((state.toFeedersKg - before.toFeedersKg) / 10).toBeCloseTo(1 - removedInAllRounds(0.1, 0.05), 9);
});
test('run empty after the last feed, it has removed what the closed form says', () => {
  let state = emptyHopper;
  for (let step = 0; step < 50; step++) state = stepHopper(state, 3, 0.15, 0.3, 0.5);
  while (state.hopperKg > 1e-12) state = stepHopper(state, 0, 0.15, 0.3, 0.5);
  expect(state.removedKg / 150).toBeCloseTo(removedInAllRounds(0.15, 0.3), 12);
});
