import { expect, test } from 'vitest';
import { countStrengthProduct, yarnTenacityCnPerTex } from '../../../src/model/mill/strength.ts';

const ring = (inches: number, fibres: number) => yarnTenacityCnPerTex('ringCarded', 30, inches, fibres);

test('longer staple, more fibres and combing use more of the strength; rotor uses less', () => {
  expect(ring(1.2, 100)).toBeGreaterThan(ring(1.0, 100));
  expect(ring(1.1, 120)).toBeGreaterThan(ring(1.1, 80));
  expect(yarnTenacityCnPerTex('ringCombed', 30, 1.1, 100)).toBeGreaterThan(ring(1.1, 100));
  expect(yarnTenacityCnPerTex('rotor', 30, 1.1, 100)).toBeLessThan(ring(1.1, 100));
});

test('twice the fibre strength, twice the yarn', () => {
  expect(yarnTenacityCnPerTex('rotor', 40, 1.1, 100)).toBeCloseTo(2 * yarnTenacityCnPerTex('rotor', 20, 1.1, 100), 12);
});

test('the lea shows 70 % of what its strands would bear together', () => {
  expect(countStrengthProduct(16)).toBeCloseTo(0.7 * countStrengthProduct(16, 1), 9);
});
