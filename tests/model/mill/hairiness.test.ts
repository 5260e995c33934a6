import { expect, test } from 'vitest';
import { fibreEndsPerCm } from '../../../src/model/mill/hairiness.ts';

test('100 fibres of 20 mm have ten ends in a millimetre of yarn', () => {
  expect(fibreEndsPerCm(100, 20)).toBeCloseTo(100, 12);
});
test('longer fibre has fewer ends', () => {
  expect(fibreEndsPerCm(100, 30)).toBeLessThan(fibreEndsPerCm(100, 20));
});
