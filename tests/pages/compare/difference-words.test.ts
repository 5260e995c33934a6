import { expect, test } from 'vitest';
import { withDecision } from '../../../src/compare/changed-decisions.ts';
import { compareSeasons } from '../../../src/compare/compare-seasons.ts';
import { compare as enCompare } from '../../../src/language/messages/en/compare.ts';
import { en } from '../../../src/language/messages/en.ts';
import { compare as esCompare } from '../../../src/language/messages/es/compare.ts';
import { es } from '../../../src/language/messages/es.ts';
import { makeWords } from '../../../src/language/words.ts';
import { runSeason } from '../../../src/model/chain.ts';
import { farmOf } from '../../../src/model/farms.ts';
import { outcomeKeys } from '../../../src/model/season-outcomes.ts';
import { changeInWords as phrasesOf } from '../../../src/pages/compare/difference-words.ts';
import { catalogueLines } from '../../language/catalogue-lines.ts';

const changeInWords = (...asked: Parameters<typeof phrasesOf>): string[] => phrasesOf(...asked).map(({ text }) => text);

const english = makeWords('en', 'us', en);
const metric = makeWords('en', 'metric', en);
const spanish = makeWords('es', 'us', es);
const farm = farmOf('coastal-plain')!;
const early = withDecision(farm, { station: 'boll', key: 'openPercent' }, 40);
const [before, after] = [runSeason(farm, 1, null), runSeason(early, 1, null)];

test('the phrases say the differences of the two seasons, the bales first', () => {
  const bales = before.classing!.classed.length - after.classing!.classed.length;
  const usd = Math.round(before.payments!.netToFarmUsd - after.payments!.netToFarmUsd).toLocaleString('en-US');
  expect(bales).toBeGreaterThan(1);
  expect(changeInWords(before, after, english)[0]).toBe(`${bales} bales fewer`);
  expect(changeInWords(before, after, english)).toContain(`$${usd} less to the farm`);
  expect(changeInWords(before, after, english)).toContain('color 41 → 31');
  expect(changeInWords(before, after, spanish)[0]).toBe(`${bales} pacas menos`);
  expect(changeInWords(before, after, spanish)).toContain(`$${usd} menos para la granja`);
});

test('swapped, every phrase turns round', () => {
  const there = changeInWords(before, after, english);
  const back = changeInWords(after, before, english);
  expect(back[0]).toBe(there[0]!.replace('fewer', 'more'));
  expect(back).toContain('color 31 → 41');
});

test('one bale is said as one bale', () => {
  const small = farmOf('hand-picked-1930s')!;
  const pairs = Array.from({ length: 12 }, (_, seed) => runSeason(small, seed + 1, null));
  const one = pairs.flatMap((a) =>
    pairs.filter((b) => b.classing!.classed.length - a.classing!.classed.length === 1).map((b) => [a, b] as const),
  )[0]!;
  expect(changeInWords(one[0], one[1], english)).toContain('one bale more');
  expect(changeInWords(one[1], one[0], spanish)).toContain('una paca menos');
});

test('staples are counted for an American reader and measured for a metric one', () => {
  const long = runSeason(withDecision(farm, { station: 'planting', key: 'variety' }, 'uplandLong'), 1, null);
  const by = compareSeasons(before, long).difference.staple32nds!;
  expect(changeInWords(before, long, english)).toContain(
    `${(Math.round(by * 10) / 10).toFixed(Number.isInteger(Math.round(by * 10) / 10) ? 0 : 1)} staples longer`,
  );
  const mm = ((by * 25.4) / 32).toFixed(1);
  expect(changeInWords(before, long, metric)).toContain(`fiber ${mm}\u00a0mm longer`);
});

test('nothing is said of a season beside itself, and a lost crop is said plainly', () => {
  expect(changeInWords(before, before, english)).toEqual([]);
  const failed = runSeason(withDecision(farm, { station: 'planting', key: 'plantingDayOfYear' }, 300), 1, null);
  expect(changeInWords(before, failed, english)).toEqual(['no bale at all: the crop came to nothing']);
  expect(changeInWords(failed, before, spanish)).toEqual(['una cosecha donde no había ninguna']);
});

test('both languages name every outcome, with the same lines and the same names to fill in', () => {
  const [first, second] = [catalogueLines(enCompare), catalogueLines(esCompare)];
  expect([...second.keys()]).toEqual([...first.keys()]);
  const names = (line: string) => [...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();
  for (const [key, line] of first) expect([key, names(second.get(key)!)]).toEqual([key, names(line)]);
  expect(Object.keys(enCompare.outcomes).sort()).toEqual([...outcomeKeys].sort());
});
