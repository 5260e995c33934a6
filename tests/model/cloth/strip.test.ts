import { expect, test } from 'vitest';
import { stripNewtons, stripTenacity } from '../../../src/model/cloth/strip.ts';

test('300 g/m2, 5 cm, 900 N is 6 cN/tex (GATE 2021 Q52, Indian Institutes of Technology)', () => {
  expect(stripTenacity(900, 50, 300)).toBeCloseTo(6, 12);
});

test('threads add: 50 threads of 20 tex and 15 cN/tex in 5 cm bear 150 N', () => {
  expect(stripNewtons(25.4, 20, 15)).toBeCloseTo(150, 9);
});
