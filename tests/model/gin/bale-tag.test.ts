import { expect, test } from 'vitest';
import { baleMark, baleTag } from '../../../src/model/gin/bale-tag.ts';

test('a tag is the code no gin has and seven digits', () => {
  expect(baleTag(1)).toBe('000000000001');
  expect(baleTag(9_999_999)).toBe('000009999999');
});
test.each([-1, 10_000_000, 1.5, Number.NaN])('%d does not fit', (number) => {
  expect(() => baleTag(number)).toThrow(RangeError);
});
test('a mark is letters and a number', () => {
  expect(baleMark(12)).toBe('SF 12');
});
