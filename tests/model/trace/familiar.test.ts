import { expect, test } from 'vitest';
import { familiarFor, familiarOf } from '../../../src/model/trace/familiar.ts';

test('a sheet of plywood of 4 by 8 ft covers 32 square feet, 2.973 square meters (by hand)', () => {
  expect(familiarOf('plywood').squareMetres).toBeCloseTo(2.973, 3);
});
test('the largest thing that is no larger than the field; the smallest for a field smaller still', () => {
  expect(familiarFor(24).id).toBe('parkingSpace');
  expect(familiarFor(familiarOf('plywood').squareMetres).id).toBe('plywood');
  expect(familiarFor(0.1).id).toBe('towel');
  expect(familiarFor(4047).id).toBe('tennisCourt');
  expect(familiarFor(40_470).id).toBe('footballField');
});
