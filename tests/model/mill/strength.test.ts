import { expect, test } from 'vitest';
import { countStrengthProduct, yarnTenacityCnPerTex } from '../../../src/model/mill/strength.ts';

const ring = (inches: number, fibres: number) => yarnTenacityCnPerTex('ringCarded', 30, inches, fibres, 0);

test('longer staple and more fibres use more of the strength; rotor uses less', () => {
  expect(ring(1.2, 100)).toBeGreaterThan(ring(1.0, 100));
  expect(ring(1.1, 120)).toBeGreaterThan(ring(1.1, 80));
  expect(yarnTenacityCnPerTex('rotor', 30, 1.1, 100, 0)).toBeLessThan(ring(1.1, 100));
});

test('each point of noil adds 1 %, and only where there is a comber', () => {
  const combed = (noil: number) => yarnTenacityCnPerTex('ringCombed', 30, 1.1, 100, noil);
  expect(combed(10) / combed(0)).toBeCloseTo(1.1, 12);
  expect(yarnTenacityCnPerTex('rotor', 30, 1.1, 100, 14)).toBe(yarnTenacityCnPerTex('rotor', 30, 1.1, 100, 0));
});

test('twice the fibre strength, twice the yarn', () => {
  const rotor = (strength: number) => yarnTenacityCnPerTex('rotor', strength, 1.1, 100, 0);
  expect(rotor(40)).toBeCloseTo(2 * rotor(20), 12);
});

test('the lea shows 70 % of what its strands would bear together', () => {
  expect(countStrengthProduct(16)).toBeCloseTo(0.7 * countStrengthProduct(16, 1), 9);
});
