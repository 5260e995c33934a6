import { describe, expect, test } from 'vitest';
import {
  blend,
  fromFibrogram,
  gaussianByMass,
  lengthAtMm,
  lengthCount,
  normalised,
  stepMm,
  totalLengthMm,
  uniformLength,
} from '../../../src/model/length/length-distribution.ts';
import { meanLengthMm } from '../../../src/model/length/statistics.ts';

test('the lattice runs in half millimetres to 65 mm', () => {
  expect(lengthAtMm(0)).toBe(stepMm);
  expect(lengthAtMm(lengthCount - 1)).toBe(65);
});

describe('every maker gives one millimetre of fibre in all', () => {
  test.each([
    ['one length', uniformLength(28)],
    ['a Gaussian by mass', gaussianByMass(30.7, 0.16)],
    ['an exponential', fromFibrogram((x) => 6 * Math.exp(-x / 6))],
    ['raw numbers', normalised([3, 0, 5])],
    [
      'a blend',
      blend([
        { lengths: uniformLength(20), share: 3 },
        { lengths: uniformLength(30), share: 5 },
      ]),
    ],
  ])('%s', (_name, lengths) => {
    expect(lengths).toHaveLength(lengthCount);
    expect(totalLengthMm(lengths)).toBeCloseTo(1, 12);
    expect(Math.min(...lengths)).toBeGreaterThanOrEqual(0);
  });
});

test('no fibre at all is an error, not an empty distribution', () => {
  expect(() => normalised([0, 0])).toThrow(RangeError);
  expect(() => normalised([Number.NaN])).toThrow(RangeError);
  expect(() => blend([])).toThrow(RangeError);
  expect(() => blend([{ lengths: uniformLength(20), share: 0 }])).toThrow(RangeError);
});

test('a length outside the lattice goes to its nearest end', () => {
  expect(uniformLength(0)[0]).toBeGreaterThan(0);
  expect(uniformLength(900)[lengthCount - 1]).toBeGreaterThan(0);
});

test('a Gaussian by mass has its centre as mean by weight', () => {
  expect(meanLengthMm(gaussianByMass(30.7, 0.16), 'weight')).toBeCloseTo(30.7, 6);
});

test('a blend goes by mass: three parts of 20 mm and one of 30 mm hold their shares of the mass', () => {
  const mix = blend([
    { lengths: uniformLength(20), share: 3 },
    { lengths: uniformLength(30), share: 1 },
  ]);
  expect(mix[20 / stepMm - 1]! * 20).toBeCloseTo(0.75, 12);
  expect(mix[30 / stepMm - 1]! * 30).toBeCloseTo(0.25, 12);
});
