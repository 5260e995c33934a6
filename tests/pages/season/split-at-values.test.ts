import { expect, test } from 'vitest';
import { splitAtValues } from '../../../src/pages/season/split-at-values.ts';

const said = (sentence: string, values: readonly string[]) =>
  splitAtValues(sentence, values).map(({ text, value }) => (value === null ? text : [text]));

test('a sentence is cut at its values, and put together again it is the same', () => {
  expect(said('12 lb of 15.2 lb, or 80%.', ['15.2 lb', '80%', '12 lb'])).toEqual([
    ['12 lb'],
    ' of ',
    ['15.2 lb'],
    ', or ',
    ['80%'],
    '.',
  ]);
  expect(said('5 bolls', [])).toEqual(['5 bolls']);
  expect(said('', ['5'])).toEqual([]);
});

test('a value is not found inside a longer number', () => {
  expect(said('15 and 5.2 and 1,5 and 5,000 and 5.', ['5'])).toEqual(['15 and 5.2 and 1,5 and 5,000 and ', ['5'], '.']);
});

test('of two values that begin alike the longer is taken', () => {
  expect(said('It is 5 lb 2 oz.', ['5 lb', '5 lb 2 oz'])).toEqual(['It is ', ['5 lb 2 oz'], '.']);
});
