import { expect, test } from 'vitest';
import { coarsestNeFor, listedCloth, warpNeOf } from '../../src/lessons/listed-cloths.ts';

test('a quilting base of 68 x 68 weighs what its maker sells, 3.5 yd/lb at 45 in, within 5 percent', () => {
  expect(listedCloth('quilting').yardsPerPound / 3.5).toBeGreaterThan(0.95);
  expect(listedCloth('quilting').yardsPerPound / 3.5).toBeLessThan(1.05);
});

test('cover is K1 + K2 - K1 K2 / 28 over 28, K threads an inch over the root of Ne (Manian, after Peirce)', () => {
  const k = 68 / Math.sqrt(28);
  expect(listedCloth('quilting').coverFraction).toBeCloseTo((2 * k - (k * k) / 28) / 28, 9);
  expect(warpNeOf('lawn')).toBeCloseTo(60, 9);
});

test('equal plain cloth jams where the spacing is root three diameters (Peirce): 300 threads each way ask for Ne 221', () => {
  // Pressed threads are four fifths as thick: 28 sqrt(Ne) / (0.8 sqrt 3) threads an inch.
  const ne = ((300 * 0.8 * Math.sqrt(3)) / 28) ** 2;
  expect(coarsestNeFor(300, 'plain')).toBe(Math.ceil(ne));
  expect(coarsestNeFor(300, 'sateen')).toBeLessThan(coarsestNeFor(300, 'plain'));
});

test('a knit and an impossible sett are refused', () => {
  expect(() => listedCloth('jersey')).toThrow(RangeError);
  expect(() => coarsestNeFor(5000, 'plain')).toThrow(RangeError);
});
