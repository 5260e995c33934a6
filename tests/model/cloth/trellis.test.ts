import { expect, test } from 'vitest';
import { listedCloth } from '../../../src/lessons/listed-cloths.ts';
import { lockingAngle, mostStretchPercent } from '../../../src/model/cloth/trellis.ts';

const { construction } = listedCloth('quilting');

test('threads touch where the sine of their angle is the share of the inch that they fill (trellis geometry)', () => {
  expect(Math.sin(lockingAngle(construction))).toBeCloseTo(68 / Math.sqrt(28) / 28, 9);
});

test('on the bias the strip is the long diagonal of a rhombus: root 2 times the cosine of half the angle', () => {
  const diagonal = Math.SQRT2 * Math.cos(lockingAngle(construction) / 2);
  expect(mostStretchPercent(construction, Math.PI / 4)).toBeCloseTo(100 * (diagonal - 1), 9);
});

test('along a thread only its waves give: the crimp', () => {
  expect(mostStretchPercent(construction, 0)).toBeCloseTo(construction.warpCrimpPercent, 9);
  expect(mostStretchPercent(construction, Math.PI / 2)).toBeCloseTo(construction.weftCrimpPercent, 9);
});

test('the bias gives most, and open cloth more than close cloth', () => {
  const at = (degrees: number) => mostStretchPercent(construction, (degrees * Math.PI) / 180);
  expect(at(45)).toBeGreaterThan(at(30));
  expect(at(30)).toBeGreaterThan(at(15));
  expect(mostStretchPercent(listedCloth('gauze').construction, Math.PI / 4)).toBeGreaterThan(at(45));
});
