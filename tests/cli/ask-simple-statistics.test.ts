import { expect, test } from 'vitest';
import { askSimpleStatistics } from '../../src/cli/ask-simple-statistics.ts';

// The error function is tabulated: erf(1) = 0.8427 (Abramowitz & Stegun, table 7.1).
test('a number is asked about as it stands', () => {
  expect(askSimpleStatistics('errorFunction(1)')).toBeCloseTo(0.8427, 4);
});

test.each(['mean(nothing)', 'median(medium)', 'medium', ''])('a call of another form is refused: %s', (call) => {
  expect(() => askSimpleStatistics(call)).toThrow(RangeError);
});
