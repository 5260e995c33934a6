import { expect, test } from 'vitest';
import { ginBalance, streamKg, streamParts } from '../../src/lessons/gin-balance.ts';
import { lessonSeason } from '../../src/lessons/lesson-season.ts';

const season = lessonSeason();
const { into, steps } = ginBalance(season);

test('each part that goes in, with the water added, is taken out or in the bale', () => {
  for (const part of streamParts) {
    const added = steps.reduce((sum, step) => sum + step.added[part], 0);
    const taken = steps.reduce((sum, step) => sum + step.taken[part], 0);
    expect(into[part] + added - taken - steps.at(-1)!.left[part]).toBeCloseTo(0, 9);
  }
});

test('what is left is what the press ties, shared out', () => {
  const { bales } = season.pressing!;
  const mean = bales.reduce((sum, { netKg }) => sum + netKg, 0) / bales.length;
  expect(streamKg(steps.at(-1)!.left)).toBeCloseTo(mean, 6);
});

test('published: spindle-picked cotton gives some 33 to 40 % of its weight as lint (USDA Agriculture Handbook 503, from memory)', () => {
  const turnout = streamKg(steps.at(-1)!.left) / streamKg(into);
  expect(turnout).toBeGreaterThan(0.33);
  expect(turnout).toBeLessThan(0.4);
});

test('a season without a bale is refused', () => {
  expect(() => ginBalance({ ...season, pressing: null })).toThrow(/no bale/);
});
