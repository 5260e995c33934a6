import { expect, test } from 'vitest';
import { spindleMinutesPerKilometre } from '../../../src/model/mill/spindle-time.ts';

test('1000 turns a metre at 15,000 a minute deliver 15 m a minute (GATE 2000, Indian Institutes of Technology)', () => {
  expect(1000 / spindleMinutesPerKilometre(1000)).toBeCloseTo(15, 12);
});
