import { describe, expect, test } from 'vitest';
import { varietyOf } from '../../../src/model/field/varieties.ts';
import type { VarietyId } from '../../../src/model/field/variety-facts.ts';

const ids: VarietyId[] = ['uplandShort', 'uplandMedium', 'uplandLong', 'pima'];

describe.each(ids)('%s', (id) => {
  const variety = varietyOf(id, 'present');
  test('lint and seed of its seeds make the boll', () => {
    const lint = (variety.seedsPerBoll * variety.lintPerSeedMg) / 1000;
    const seed = (variety.seedsPerBoll * variety.seedIndexGrams) / 100;
    expect(lint + seed).toBeCloseTo(variety.bollGrams, 10);
  });
  test('the dry lint share is the one it was given', () => {
    const lint = variety.lintPerSeedMg * (1 - 0.0783);
    const seed = variety.seedIndexGrams * 10 * (1 - 0.097);
    expect(lint / (lint + seed)).toBeCloseTo(variety.lintShare, 10);
  });
  test('the 1930s had less lint on the seed, in smaller bolls, of the same fibre', () => {
    const old = varietyOf(id, 'thirties');
    expect(old.lintShare).toBeLessThan(variety.lintShare);
    expect(old.bollGrams).toBeLessThan(variety.bollGrams);
    expect(old.capacityFactor).toBeLessThan(0.5);
    expect(old.peakMm).toBe(variety.peakMm);
    expect(old.lintPerSeedMg / old.fibresPerSeed).toBeCloseTo(variety.lintPerSeedMg / variety.fibresPerSeed, 12);
  });
});
test('the classes stand in order of length and of fineness', () => {
  const present = ids.map((id) => varietyOf(id, 'present'));
  for (let k = 1; k < present.length; k++) {
    expect(present[k]!.peakMm).toBeGreaterThan(present[k - 1]!.peakMm);
    expect(present[k]!.standardFinenessMtex).toBeLessThan(present[k - 1]!.standardFinenessMtex);
  }
});
test('only Pima is Pima', () => {
  expect(ids.map((id) => varietyOf(id, 'present').kind)).toEqual(['upland', 'upland', 'upland', 'pima']);
});
