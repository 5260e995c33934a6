import { expect, test } from 'vitest';
import { lessonSeason } from '../../src/lessons/lesson-season.ts';
import { oneBoll } from '../../src/lessons/one-boll.ts';

const season = lessonSeason();
const boll = oneBoll(season);

test('all patches together are the cloth of the season', () => {
  const { field, scenario, weaving } = season;
  const bolls = field.bollsPerPlant * field.plantsPerAcre * scenario.acres;
  const squareInches = weaving!.cloth!.squareMetres / 0.0254 ** 2;
  expect(bolls * boll.patchInches ** 2).toBeCloseTo(squareInches, 0);
});

test('the thread of a patch weighs what the patch weighs, finish aside (hank 840 yd, pound 453.59237 g)', () => {
  const threadGrams = (boll.yarnYards / (840 * boll.yarnNe)) * 453.59237;
  expect(Math.abs(threadGrams / boll.patchGrams - 1)).toBeLessThan(0.03);
});

test('fibers times their mean mass is the lint; seed and lint are the boll', () => {
  expect(boll.lintGrams + boll.seedGrams).toBeCloseTo(boll.seedCottonGrams, 9);
  expect(boll.fibreMetres / boll.fibres).toBeGreaterThan(0.02);
  expect(boll.fibreMetres / boll.fibres).toBeLessThan(0.03);
});

test('textbooks, from memory: a quarter to half a million fibers in a boll', () => {
  expect(boll.fibres).toBeGreaterThan(250_000);
  expect(boll.fibres).toBeLessThan(600_000);
});

test('a season without cloth is refused', () => {
  expect(() => oneBoll({ ...season, weaving: null })).toThrow(/no woven cloth/);
});
