import { expect, test } from 'vitest';
import type { WovenConstruction } from '../../../src/model/cloth/construction.ts';
import { relax, thicknessMm, usualCrimpPercent, weftCrimpFromWarp } from '../../../src/model/cloth/crimp.ts';
import { yarnGramsPerSquareMetre } from '../../../src/model/cloth/weight.ts';

const cloth: WovenConstruction = {
  weave: 'plain',
  warpTex: 20,
  weftTex: 15,
  endsPerInch: 70,
  picksPerInch: 60,
  warpCrimpPercent: 6,
  weftCrimpPercent: 7,
};

test('floating yarn is straighter', () => {
  expect(usualCrimpPercent('twill').warp).toBeCloseTo(usualCrimpPercent('plain').warp / 2, 12);
});

test('more crimp in the warp leaves less to the weft, and none below nothing', () => {
  const weft = (warp: number) => weftCrimpFromWarp(0.4, 0.36, 0.34, warp);
  expect(weft(12)).toBeLessThan(weft(6));
  expect(weft(60)).toBe(0);
});

test('cloth is at least as thick as its crossing yarns pressed flat, at most both waves high', () => {
  expect(thicknessMm(cloth)).toBeGreaterThan(0.16);
  expect(thicknessMm({ ...cloth, warpCrimpPercent: 12 })).toBeGreaterThan(thicknessMm(cloth));
});

test('drawing in: threads closer, crimp higher, weight up by the area lost', () => {
  const relaxed = relax(cloth, 5, 3);
  expect(relaxed.endsPerInch).toBeCloseTo(70 / 0.97, 12);
  expect(relaxed.picksPerInch).toBeCloseTo(60 / 0.95, 12);
  expect(relaxed.warpCrimpPercent).toBeCloseTo(100 * (1.06 / 0.95 - 1), 12);
  const grams = (c: WovenConstruction) => yarnGramsPerSquareMetre(c).warp + yarnGramsPerSquareMetre(c).weft;
  expect(grams(relaxed)).toBeCloseTo(grams(cloth) / (0.95 * 0.97), 10);
});
