import { expect, test } from 'vitest';
import { describeInterlock } from '../../../src/model/cloth/describe-interlock.ts';

const interlock = describeInterlock(14.76, 3);

test('courses by wales and courses over wales (Roy, Varshney & Kothari, Indian J. Fibre & Textile Research: 22.56 and 1.41)', () => {
  expect(interlock.loopsPerSquareCm * 0.3 ** 2).toBeCloseTo(22.56, 2);
  expect(interlock.coursesPerInch / interlock.walesPerInch).toBeCloseTo(1.41, 2);
});

test('a usual interlock weighs between 200 and 260 g/m2 (seller’s chart, aaenterprises.in)', () => {
  expect(interlock.gramsPerSquareMetre).toBeGreaterThan(200);
  expect(interlock.gramsPerSquareMetre).toBeLessThan(260);
});

test('a tighter loop makes it heavier', () => {
  expect(describeInterlock(14.76, 2.8).gramsPerSquareMetre).toBeGreaterThan(interlock.gramsPerSquareMetre);
});
