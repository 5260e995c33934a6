import { expect, test } from 'vitest';
import { leafGrade } from '../../../src/model/classing/leaf.ts';

test('leaf beyond the last edge is below grade: 8 upland, 7 Pima', () => {
  expect(leafGrade('upland', 1.6)).toBe(8);
  expect(leafGrade('pima', 2.8)).toBe(7);
  expect(leafGrade('upland', 0)).toBe(1);
});
