import { expect, test } from 'vitest';
import {
  backingYards,
  quiltClothSquareYards,
  roundUpYards,
  squareYards,
  yardsAtWidth,
} from '../../../src/model/trace/yardage.ts';

test('a yard square', () => {
  expect(squareYards(36, 36)).toBe(1);
});
test('rounds up to a quarter, and leaves a whole quarter alone', () => {
  expect(roundUpYards(4.01)).toBe(4.25);
  expect(roundUpYards(4.25)).toBe(4.25);
});
test('one strip suffices for a narrow back', () => {
  expect(backingYards(42, 54)).toBe(1.5);
});
test('strips run the way that takes less cloth', () => {
  expect(backingYards(84, 126)).toBe(backingYards(126, 84));
});
test('the same cloth there and back', () => {
  expect(yardsAtWidth(yardsAtWidth(3, 44, 60), 60, 44)).toBeCloseTo(3, 12);
});
test('a quilt of 65 x 88 in: 5.74 for its top, 5.41 for its back and 0.58 for its binding (worked by hand)', () => {
  const area = quiltClothSquareYards(65, 88, { piecing: 1.3, overInches: 8, bindingYards: 0.5, usableInches: 42 });
  expect(area).toBeCloseTo(5.74 + 5.41 + 0.58, 1);
});
