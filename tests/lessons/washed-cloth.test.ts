import { expect, test } from 'vitest';
import { washedCloth, washedClothIds } from '../../src/lessons/washed-cloth.ts';
import { yarnKilometresPerSquareMetre } from '../../src/model/cloth/weight.ts';

test.each(washedClothIds)('%s: a piece holds as much thread after the wash as before', (id) => {
  const { bought, washed, lengthPercent, widthPercent, boughtGrams, washedGrams } = washedCloth(id);
  const area = (1 - lengthPercent / 100) * (1 - widthPercent / 100);
  const [before, after] = [yarnKilometresPerSquareMetre(bought), yarnKilometresPerSquareMetre(washed)];
  expect(after.warp * area).toBeCloseTo(before.warp, 9);
  expect(after.weft * area).toBeCloseTo(before.weft, 9);
  expect(washedGrams * area).toBeCloseTo(boughtGrams, 9);
});

test('derived by hand: a crimp of 6 % and 3 % of shrinkage make 1.06/0.97 - 1 = 9.28 %', () => {
  const { washed, lengthPercent } = washedCloth('quilting');
  expect(lengthPercent).toBe(3);
  expect(washed.warpCrimpPercent).toBeCloseTo(9.278, 2);
});

test('textbook ranges, from memory: off the loom 8 to 15 %, gauze 5 to 10 %, finished plain cloth 3 to 8 %', () => {
  const lost = (id: Parameters<typeof washedCloth>[0]) => washedCloth(id).lengthPercent;
  expect(lost('loomState')).toBeGreaterThan(lost('gauze'));
  expect(lost('gauze')).toBeGreaterThan(lost('muslin'));
  expect(lost('muslin')).toBeGreaterThan(lost('quilting'));
});
