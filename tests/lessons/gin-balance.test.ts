import { expect, test } from 'vitest';
import { ginBalance, streamKg, streamParts } from '../../src/lessons/gin-balance.ts';
import { lessonSeason, lessonSeed } from '../../src/lessons/lesson-season.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';
import { poundsFromKilograms } from '../../src/model/units.ts';

const season = lessonSeason();
const { into, steps, seedKg } = ginBalance(season);

test('each part that goes in, with the water added, is taken out or in the bale', () => {
  for (const part of streamParts) {
    const added = steps.reduce((sum, step) => sum + step.added[part], 0);
    const taken = steps.reduce((sum, step) => sum + step.taken[part], 0);
    expect(into[part] + added - taken - steps.at(-1)!.left[part]).toBeCloseTo(0, 9);
  }
});

test('what is left is a statistical bale, 480 lb net by the definition of USDA statistics', () => {
  expect(poundsFromKilograms(streamKg(steps.at(-1)!.left))).toBeCloseTo(480, 6);
});

test('a remnant counts for what it weighs: published, 1,300 to 1,400 lb of hand-picked seed cotton to 480 lb of lint (USDA Agriculture Handbook 503, from memory), a tenth allowed', () => {
  const byHand = runSeason(farmOf('hand-picked-1930s')!, lessonSeed, null);
  expect(byHand.pressing!.bales.some(({ remnant }) => remnant)).toBe(true);
  const pounds = poundsFromKilograms(streamKg(ginBalance(byHand).into));
  expect(pounds).toBeGreaterThan(1300 * 0.9);
  expect(pounds).toBeLessThan(1400 * 1.1);
});

test('published: 696 lb of seed to a bale of 500 lb (Ashley, Thomas, Holt & Valco 2018, J. Cotton Sci. 22:47-59), a tenth allowed', () => {
  const toFiveHundred = (poundsFromKilograms(seedKg) * 500) / 480;
  expect(Math.abs(toFiveHundred / 696 - 1)).toBeLessThan(0.1);
});

test('published: spindle-picked cotton gives some 33 to 40 % of its weight as lint (USDA Agriculture Handbook 503, from memory)', () => {
  const turnout = streamKg(steps.at(-1)!.left) / streamKg(into);
  expect(turnout).toBeGreaterThan(0.33);
  expect(turnout).toBeLessThan(0.4);
});

test('a season without a bale is refused', () => {
  expect(() => ginBalance({ ...season, pressing: null })).toThrow(/no bale/);
});
