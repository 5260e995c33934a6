import { expect, test } from 'vitest';
import { fibreLimits, limitsOf, numberWithin } from '../../../src/model/bench/check-set-up.ts';

test('a number inside its limits is read, with a point or a comma', () => {
  expect(numberWithin('length', ' 1.12 ', fibreLimits.lengthIn)).toEqual({ value: 1.12 });
  expect(numberWithin('length', '1,12', fibreLimits.lengthIn)).toEqual({ value: 1.12 });
});

test.each(['', 'long', '0.1', '9', 'NaN', 'Infinity'])(
  '"%s" is named as it was typed, with what is allowed',
  (text) => {
    expect(numberWithin('length', text, fibreLimits.lengthIn)).toEqual({
      problem: { field: 'length', value: text, rule: { kind: 'range', low: 0.5, high: 1.8, step: null, unit: 'in' } },
    });
  },
);

test('a grade is whole', () => {
  expect(numberWithin('leaf', '2.5', fibreLimits.leaf, true)).toHaveProperty('problem');
});

test('Pima has one leaf grade fewer (Classification of American Pima, USDA-AMS)', () => {
  expect(limitsOf('leaf', 'upland').high - limitsOf('leaf', 'pima').high).toBe(1);
});
