import { expect, test } from 'vitest';
import { fiberSection, sectionCottons } from '../../src/lessons/fiber-section.ts';
import { micronaireOf } from '../../src/model/fibre.ts';

test('the instrument would read both fibers as asked (Lord 1956, from memory: the relation solved the other way)', () => {
  for (const cotton of sectionCottons)
    for (const micronaire of [2.8, 3.5, 4.2, 5.4]) {
      const { linearDensityMtex, maturityRatio } = fiberSection(cotton, micronaire);
      expect(micronaireOf(linearDensityMtex, maturityRatio)).toBeCloseTo(micronaire, 9);
    }
});

test('worked example: upland of ripe fineness 195 mtex that reads 4.2 has maturity 0.898 and 175.2 mtex', () => {
  const { linearDensityMtex, maturityRatio } = fiberSection('upland', 4.2);
  expect(maturityRatio).toBeCloseTo(0.898, 3);
  expect(linearDensityMtex).toBeCloseTo(175.2, 1);
});

test('the wall of a ripe fiber fills 0.577 of the circle (Peirce & Lord 1939), and the finer cotton has the smaller circle', () => {
  for (const cotton of sectionCottons) {
    const { radius, hollow, maturityRatio } = fiberSection(cotton, 4.5);
    expect((1 - (hollow / radius) ** 2) / maturityRatio).toBeCloseTo(0.577, 9);
  }
  expect(fiberSection('pima', 4).radius).toBeLessThan(fiberSection('upland', 4).radius);
});
