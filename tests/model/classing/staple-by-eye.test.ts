import { expect, test } from 'vitest';
import { fractionName, stapleByEye } from '../../../src/model/classing/staple-by-eye.ts';

test.each([
  [36, 32, '1-1/8'],
  [32, 32, '1'],
  [30, 32, '15/16'],
  [31, 32, '31/32'],
  [44, 32, '1-3/8'],
  [15, 16, '15/16'],
])('%i of %i is written %s', (count, of, name) => {
  expect(fractionName(count, of)).toBe(name);
});

test('in sixteenths the odd thirty-second is dropped', () => {
  expect(stapleByEye(1.041)).toMatchObject({ name: '31/32', sixteenthsName: '15/16', sixteenths: 15 });
  expect(stapleByEye(0.4).thirtySeconds).toBe(24);
});
