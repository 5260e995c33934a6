import { expect, test } from 'vitest';
import { attractNow, onAttract, sayAttract } from '../../src/kiosk/attract-now.ts';

test('says whether the kiosk is in attract, and tells of changes only', () => {
  const told: (boolean | undefined)[] = [];
  expect(attractNow()).toBeUndefined();
  const stop = onAttract(() => told.push(attractNow()));
  for (const next of [true, true, false, undefined, undefined]) sayAttract(next);
  stop();
  sayAttract(true);
  sayAttract(undefined);
  expect(told).toEqual([true, false, undefined]);
});
