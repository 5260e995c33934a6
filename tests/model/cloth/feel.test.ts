import { expect, test } from 'vitest';
import { bendingFloorMm, drapeOf, flameExempt, flexuralRigidity, fuzzOf } from '../../../src/model/cloth/feel.ts';

test('finer fibre bends more easily, with the cube root', () => {
  expect(bendingFloorMm(0.2, 0.5) / bendingFloorMm(0.1, 0.5)).toBeCloseTo(Math.cbrt(2), 12);
});
test('rigidity grows with weight', () => {
  expect(flexuralRigidity(240, 20)).toBeCloseTo(2 * flexuralRigidity(120, 20), 12);
});
test('tighter is stiffer, floats and looseness are softer', () => {
  const quilting = drapeOf(120, 0.69, 1, 172).rigidity;
  expect(drapeOf(120, 0.9, 1, 172).rigidity).toBeGreaterThan(quilting);
  expect(drapeOf(120, 0.69, 0.4, 172).rigidity).toBeLessThan(quilting);
});
test('words: gauze falls, quilting cotton holds, canvas stands', () => {
  expect(drapeOf(36, 0.31, 1, 170).word).toBe('fluid');
  expect(drapeOf(120, 0.69, 1, 172).word).toBe('medium');
  expect(drapeOf(400, 0.97, 1, 180).word).toBe('crisp');
});
test('fuzz: combed long staple little, carded medium some, carded short much', () => {
  expect(fuzzOf(80, 3)).toBe('little');
  expect(fuzzOf(105, 8.4)).toBe('some');
  expect(fuzzOf(115, 12)).toBe('much');
});
test('2.6 oz is exempt, a hair under is not', () => {
  expect(flameExempt(88.16)).toBe(true);
  expect(flameExempt(88.14)).toBe(false);
});
