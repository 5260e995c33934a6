import { expect, test } from 'vitest';
import { lessonSeason } from '../../src/lessons/lesson-season.ts';
import { taggedBales } from '../../src/lessons/tagged-bale.ts';

const season = lessonSeason();
const bales = taggedBales(season);

test('published: a tag is five digits of the gin and seven of the bale, none twice (Permanent Bale Identification, cotton.org)', () => {
  for (const { ginCode, running } of bales) {
    expect(ginCode).toMatch(/^\d{5}$/);
    expect(running).toMatch(/^\d{7}$/);
  }
  expect(new Set(bales.map(({ running }) => running)).size).toBe(bales.length);
});

test('what the scale shows is the cotton and its wrapping, and a plastic-wrapped bale carries some 3 lb of it (National Cotton Council specifications)', () => {
  for (const { netKg, tareKg, grossKg } of bales) {
    expect(netKg + tareKg).toBeCloseTo(grossKg, 9);
    expect(tareKg / 0.45359237).toBeCloseTo(3, 6);
  }
});

test('every boll of the field stands behind one bale, and each bale comes of a module that was hauled', () => {
  const { field, scenario } = season;
  const all = field.bollsPerPlant * field.plantsPerAcre * scenario.acres;
  expect(bales.reduce((sum, { bolls }) => sum + bolls, 0) / all).toBeCloseTo(1, 9);
  for (const { module, modules } of bales) {
    expect(module).toBeGreaterThanOrEqual(1);
    expect(module).toBeLessThanOrEqual(modules);
  }
});

test('a season without a bale is refused', () => {
  expect(() => taggedBales({ ...season, pressing: null })).toThrow(/no bale/);
});
