import { describe, expect, test } from 'vitest';
import { eyeGrade } from '../../../src/model/classing/by-eye.ts';
import { fractionName, stapleByEye } from '../../../src/model/classing/staple-by-eye.ts';

describe('one grade from colour and leaf', () => {
  test.each([
    ['31', 3, 'Middling'],
    ['31', 1, 'Middling'],
    ['31', 4, 'Strict Low Middling'],
    ['21', 5, 'Strict Low Middling'],
    ['11', 8, 'Low Middling'],
    ['71', 8, 'Below Grade'],
    ['35', 6, 'Below Grade'],
    ['32', 5, 'Strict Low Middling Light Spotted'],
    ['81', 2, 'Below Grade'],
  ])('colour %s with leaf %i is %s', (code, leaf, name) => {
    expect(eyeGrade(code, leaf).colorName).toBe(name);
  });
});

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
