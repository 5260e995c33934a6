import { expect, test } from 'vitest';
import {
  meanLinearDensity,
  yarnGramsPerSquareMetre,
  yarnKilometresPerSquareMetre,
} from '../../../src/model/cloth/weight.ts';

const cloth = {
  weave: 'plain' as const,
  warpTex: 10,
  weftTex: 30,
  endsPerInch: 25.4,
  picksPerInch: 50.8,
  warpCrimpPercent: 0,
  weftCrimpPercent: 10,
};
test('ten ends a centimetre, uncrimped, make a kilometre of warp in a square metre', () => {
  expect(yarnKilometresPerSquareMetre(cloth).warp).toBeCloseTo(1, 12);
  expect(yarnKilometresPerSquareMetre(cloth).weft).toBeCloseTo(2.2, 12);
  expect(yarnGramsPerSquareMetre(cloth)).toMatchObject({ warp: expect.closeTo(10, 12), weft: expect.closeTo(66, 12) });
});
test('the mean lies between, whatever the shares add up to', () => {
  const portions = [
    { density: 10, mass: 3 },
    { density: 20, mass: 6 },
  ];
  expect(meanLinearDensity(portions)).toBeCloseTo(15, 12);
});
