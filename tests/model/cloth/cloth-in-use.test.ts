import { expect, test } from 'vitest';
import { areaKept, clothInUse, oneAfterAnother } from '../../../src/model/cloth/cloth-in-use.ts';
import { makeCloth } from '../../../src/model/cloth/making.ts';
import { yarnLot, yarnOf } from './yarn-lot.ts';

test('shrinkages one after the other leave the product of what each leaves', () => {
  const first = { length: 5, width: 3 };
  const second = { length: 4, width: 2 };
  expect(areaKept(oneAfterAnother(first, second))).toBeCloseTo(areaKept(first) * areaKept(second), 12);
});

test('a 45 in yard is 1.25 square yards', () => {
  const cloth = clothInUse(makeCloth(yarnLot, 0.5, 0.02, 'bleached'), yarnOf(30), 2000, 1900, 45);
  expect(cloth.runningYards).toBeCloseTo(1900 / 0.83612736 / 1.25, 9);
  expect(cloth.flameExempt).toBe(true);
  expect(cloth.ironDots).toBe(3);
});
