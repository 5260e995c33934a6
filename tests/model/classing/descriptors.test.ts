import { expect, test } from 'vitest';
import { micronaireClass, strengthWord, uniformityWord } from '../../../src/model/classing/descriptors.ts';

test('words are read after rounding: 82.4 is still average, 82.5 high', () => {
  expect([82.4, 82.5, 85.5].map(uniformityWord)).toEqual(['average', 'high', 'veryHigh']);
});
test('28.4 g/tex is average, 28.5 strong', () => {
  expect([28.4, 28.5].map(strengthWord)).toEqual(['average', 'strong']);
});
test('micronaire 4.94 is base, 4.96 is discounted', () => {
  expect([4.94, 4.96, 3.44, 3.46].map(micronaireClass)).toEqual(['base', 'discountHigh', 'discountLow', 'base']);
});
