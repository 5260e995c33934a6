import { expect, test } from 'vitest';
import { clothCover, coverFactor, coverFraction } from '../../../src/model/cloth/cover.ts';
import { asNe, texFromNe } from '../../../src/model/units.ts';

test('threads over the root of the count', () => {
  expect(coverFactor(68, texFromNe(asNe(36)))).toBeCloseTo(68 / 6, 12);
});
test('a full direction covers the cloth whatever the other does', () => {
  expect(clothCover(28, 9)).toBeCloseTo(28, 12);
  expect(coverFraction(28, 9)).toBeCloseTo(1, 12);
});
test('cover past full is full', () => {
  expect(coverFraction(40, 30)).toBe(1);
});
