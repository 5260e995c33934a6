import { describe, expect, test } from 'vitest';
import { bendingLengthAtMm, hangingStrip } from '../../../src/model/cloth/overhang.ts';

const angleOf = (overhangMm: number, bendingLengthMm: number): number => {
  const end = hangingStrip(overhangMm, bendingLengthMm).at(-1)!;
  return (Math.atan2(end.downMm, end.outMm) * 180) / Math.PI;
};

test('Peirce’s factor at 41.5 degrees is 0.5093, about a half', () => {
  expect(bendingLengthAtMm(1, 41.5)).toBeCloseTo(0.5093, 3);
});

test('a strip of twice its bending length is seen at 41.5 degrees (the angle of the cantilever test)', () => {
  for (const c of [15, 25, 40]) expect(angleOf(2 * c, c)).toBeCloseTo(41.5, 1);
});

describe('the curve agrees with Peirce’s formula for the angles he measured at', () => {
  test.each([1.6, 1.8, 2, 2.2, 2.4])('overhang %f times the bending length', (times) => {
    expect(bendingLengthAtMm(times * 20, angleOf(times * 20, 20))).toBeGreaterThan(20 * 0.96);
    expect(bendingLengthAtMm(times * 20, angleOf(times * 20, 20))).toBeLessThan(20 * 1.04);
  });
});

test('the strip keeps its length and never rises', () => {
  const places = hangingStrip(60, 18);
  let length = 0;
  for (let i = 1; i < places.length; i++) {
    const [before, here] = [places[i - 1]!, places[i]!];
    length += Math.hypot(here.outMm - before.outMm, here.downMm - before.downMm);
    expect(here.downMm).toBeGreaterThanOrEqual(before.downMm);
  }
  expect(length).toBeCloseTo(60, 6);
});

test('a stiffer strip droops less', () => {
  expect(angleOf(60, 30)).toBeLessThan(angleOf(60, 20));
});
