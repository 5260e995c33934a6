import { expect, test } from 'vitest';
import { stapleCode32nds } from '../../../src/model/classing/staple.ts';

test('codes 25 and 27 do not exist (Classification of Upland Cotton, USDA-AMS)', () => {
  const codes = new Set(Array.from({ length: 200 }, (_, i) => stapleCode32nds('upland', 0.5 + i / 200)));
  expect(codes.has(25)).toBe(false);
  expect(codes.has(27)).toBe(false);
  expect(codes.size).toBe(19);
});
test('Pima steps by sixteenths from 40 to 52', () => {
  const codes = new Set(Array.from({ length: 120 }, (_, i) => stapleCode32nds('pima', 1 + i / 200)));
  expect([...codes]).toEqual([40, 42, 44, 46, 48, 50, 52]);
});
test('length is rounded first: 1.174 in is 37, 1.176 in is 38', () => {
  expect([1.174, 1.176].map((length) => stapleCode32nds('upland', length))).toEqual([37, 38]);
});
