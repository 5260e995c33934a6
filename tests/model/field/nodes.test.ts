import { expect, test } from 'vitest';
import { newHeightInches, newNodes } from '../../../src/model/field/nodes.ts';

test('a node for each 50 DD60, never faster than one in 2.7 days', () => {
  expect(newNodes(10, 0, 1, false)).toBeCloseTo(0.2, 12);
  expect(newNodes(40, 0, 1, false)).toBeCloseTo(1 / 2.7, 12);
  expect(newNodes(0, 0, 1, false)).toBe(0);
});
test('bolls and drought slow a flowering plant; a full load stops it', () => {
  expect(newNodes(10, 0.5, 1, true)).toBeCloseTo(0.1, 12);
  expect(newNodes(10, 0.5, 0.5, true)).toBeCloseTo(0.05, 12);
  expect(newNodes(10, 1.3, 1, true)).toBe(0);
});
test('before the first flower neither counts', () => {
  expect(newNodes(10, 0.5, 0.2, false)).toBe(newNodes(10, 0, 1, false));
});
test('a wilted plant makes joints half as long', () => {
  expect(newHeightInches(2, 0)).toBeCloseTo(newHeightInches(2, 1) / 2, 12);
});
