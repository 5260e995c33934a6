import { describe, expect, test } from 'vitest';
import { allQuestions, questionOf } from '../../src/compare/questions/all-questions.ts';
import { fewSeeds, howOften, spreadOf } from '../../src/compare/questions/many-seasons.ts';
import { type Amount, answerQuestion, type Question, runAsked } from '../../src/compare/questions/question.ts';
import { dryAfterOpening } from '../../src/compare/questions/rain.ts';
import { withFactsMoved } from '../../src/doubt/move-facts.ts';
import { ask as en } from '../../src/language/messages/en/ask.ts';
import { en as enMessages } from '../../src/language/messages/en.ts';
import { ask as es } from '../../src/language/messages/es/ask.ts';
import { es as esMessages } from '../../src/language/messages/es.ts';
import { makeWords } from '../../src/language/words.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';
import { totalKg } from '../../src/model/lot.ts';
import { poundsFromKilograms } from '../../src/model/units.ts';
import { amountText, answerText } from '../../src/pages/ask/answer-text.ts';
import { catalogueLines } from '../language/catalogue-lines.ts';

const readers = [
  { words: makeWords('en', 'us', enMessages), asked: en },
  { words: makeWords('en', 'metric', enMessages), asked: en },
  { words: makeWords('es', 'us', esMessages), asked: es },
  { words: makeWords('es', 'metric', esMessages), asked: es },
] as const;

const answers = new Map(allQuestions.map((question) => [question.id, answerQuestion(question)]));
const answerOf = (id: string) => answers.get(id)!.answer;

/** The sentences of a question for an American reader, from its first few runs where it asks pairs of seasons. */
function sentencesOf(question: Question, few = false): string {
  const runs = few && question.runs.length === 2 * fewSeeds.length ? question.runs.slice(0, 4) : question.runs;
  const answer = question.answer(runs.map(runAsked));
  const { words, asked } = readers[0];
  const text = answerText(answer, question.runs[0]!, asked.questions[question.id]!, words, asked);
  return [text.about, ...text.sentences].join(' ');
}

test('there are a dozen, each with its words in both languages', () => {
  expect(allQuestions).toHaveLength(12);
  const ids = allQuestions.map(({ id }) => id).sort();
  expect(Object.keys(en.questions).sort()).toEqual(ids);
  expect(Object.keys(es.questions).sort()).toEqual(ids);
  expect(questionOf('no-such')).toBeUndefined();
});

test('both languages hold the same lines with the same names to fill in, and Spanish opens its questions', () => {
  const [english, spanish] = [catalogueLines(en), catalogueLines(es)];
  expect([...spanish.keys()]).toEqual([...english.keys()]);
  const names = (line: string) => [...new Set([...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name))].sort();
  for (const [key, line] of english) expect([key, names(spanish.get(key)!)]).toEqual([key, names(line)]);
  const halves = [...spanish].filter(([, line]) => line.includes('?') !== line.includes('¿'));
  expect(halves).toEqual([]);
});

describe.each(allQuestions.map((question) => ({ id: question.id, question })))('$id', ({ id, question }) => {
  test('every sentence is filled, in both languages and both unit systems', () => {
    const answer = answerOf(id);
    for (const { words, asked } of readers) {
      const said = asked.questions[id]!;
      const { about, sentences, limits } = answerText(answer, question.runs[0]!, said, words, asked);
      for (const line of [about, ...sentences, ...limits]) {
        expect(line).not.toMatch(/[{}]|NaN|Infinity|undefined/);
        if (words.unitSystem === 'metric') expect(line).not.toMatch(/\d\u00a0(lb|in|yd²|°F)(?!\w)/);
        else expect(line).not.toMatch(/\d\u00a0(kg|mm|cm|m²|°C)(?!\w)/);
      }
    }
  });

  test('every number of its table has a name and a working, and there is one at least for each side', () => {
    const { shown, sides } = answerOf(id);
    for (const { asked } of readers) {
      const said = asked.questions[id]!;
      const names = { ...asked.lines, ...said.numbers };
      expect(shown.map(({ name }) => names[name]).filter((name) => !name)).toEqual([]);
      expect(said.sides).toHaveLength(sides.length);
      expect(Object.keys(said.decides).sort()).toEqual(question.decidedBy.map(({ name }) => name).sort());
    }
    for (const side of sides.keys()) expect(shown.filter(({ cells }) => cells[side]).length).toBeGreaterThan(1);
  });

  test.each(question.decidedBy)('the answer hangs on $name', ({ fact }) => {
    const before = sentencesOf(question, true);
    const tries = fact.range ?? [fact.value * 1.2];
    const changed = [...tries]
      .reverse()
      .some((to) => withFactsMoved([{ fact, to }], () => sentencesOf(question, true)) !== before);
    expect(changed).toBe(true);
  });
});

const value = (amount: Amount | undefined): number => (amount && 'value' in amount ? Number(amount.value) : Number.NaN);
const leftOf = (season: ReturnType<typeof runSeason>) => season.payments!.netToFarmUsd;

describe('answers worked out a second time, from the seasons alone', () => {
  const farm = farmOf('coastal-plain')!;

  test('a third lint cleaning', () => {
    const three = {
      ...farm,
      decisions: { ...farm.decisions, ginning: { ...farm.decisions.ginning, lintCleaners: 3 } },
    };
    const gains = fewSeeds.map((seed) => leftOf(runSeason(three, seed, null)) - leftOf(runSeason(farm, seed, null)));
    const { said, verdict } = answerOf('third-lint-cleaning');
    expect(value(said.pays)).toBe(gains.filter((gain) => gain > 0).length);
    expect(value(said.money)).toBeCloseTo(Math.abs(gains.reduce((sum, gain) => sum + gain, 0) / gains.length), 6);
    expect(verdict).toBe(
      gains.every((gain) => gain > 0) ? 'always' : gains.some((gain) => gain > 0) ? 'sometimes' : 'never',
    );
  });

  test('the rain: no drop falls on an open boll of the dry year, and all else of its weather is the same', () => {
    const season = runSeason(farm, 1, null);
    const dry = dryAfterOpening(farm, season.weather);
    const from = season.field.events.firstOpenBoll!;
    expect(runSeason(farm, 1, dry).field.crop!.rainAfterOpeningInches).toBe(0);
    for (const [i, day] of season.weather.days.entries()) {
      const expected = day.dayOfYear < from ? day : { ...day, rainInches: 0 };
      expect(dry.days[i]).toEqual(expected);
    }
    const cost = leftOf(runSeason(farm, 1, dry)) - leftOf(season);
    const { said } = answerOf('rain');
    expect(cost).toBeLessThanOrEqual(value(said.most) + 1e-6);
    expect(cost).toBeGreaterThanOrEqual(value(said.least) - 1e-6);
  });

  test('by hand: pounds picked over pounds a day, and the pay by the hundred pounds', () => {
    const then = runSeason(farmOf('hand-picked-1930s')!, 1, null);
    const pounds = poundsFromKilograms(totalKg(then.harvest!.lot));
    const bales = then.classing!.classed.length;
    const { said } = answerOf('by-hand');
    // 200 lb a day: plantation and labor records; 75 cents a hundred pounds: pickers of Hickman County in the Depression.
    expect(value(said.days)).toBeCloseTo(pounds / 200 / bales, 6);
    expect(value(said.balePay)).toBeCloseTo((0.75 * pounds) / 100 / bales, 6);
    expect(value(said.dayPay)).toBeCloseTo(1.5, 6);
  });

  test('the seed of a bale: oil, meal, hulls and linters and what is lost make up the whole', () => {
    const cells = Object.fromEntries(
      answerOf('where-the-seed-goes').shown.map(({ name, cells: [cell] }) => [name, value(cell?.value)]),
    );
    const { seedKg, ...products } = cells;
    expect(Object.values(products).reduce((sum, kg) => sum + kg, 0)).toBeCloseTo(seedKg!, 9);
    // 320 lb of oil in a short ton of seed: an oil mill, farmprogress.com.
    expect(products.oilKg! / seedKg!).toBeCloseTo(320 / 2000, 9);
  });

  test('good and bad years: the best and the worst of twelve', () => {
    const dryland = farmOf('high-plains-dryland')!;
    const paid = Array.from({ length: 12 }, (_, i) => leftOf(runSeason(dryland, i + 1, null)));
    const { said, compare } = answerOf('good-and-bad-years');
    expect(value(said.best)).toBe(Math.max(...paid));
    expect(value(said.worst)).toBe(Math.min(...paid));
    expect(paid[compare!.after.seed - 1]).toBe(Math.max(...paid));
  });
});

test('one is said as one and two as two, in both languages', () => {
  const said = (index: 0 | 2, of: 'season' | 'bale', n: number) =>
    amountText({ as: 'counted', value: n, of }, readers[index].words, readers[index].asked);
  expect([said(0, 'season', 1), said(0, 'season', 2)]).toEqual(['one season', '2 seasons']);
  expect([said(2, 'season', 1), said(2, 'season', 2)]).toEqual(['una temporada', '2 temporadas']);
  expect([said(0, 'bale', 1), said(2, 'bale', 1)]).toEqual(['one bale', 'una paca']);
});

test('a spread is told as it is, and none of nothing', () => {
  expect(spreadOf([1, -2, 4])).toEqual({ mean: 1, least: -2, most: 4, count: 3, above: 2 });
  expect(
    [
      [1, 2],
      [-1, 0],
      [1, -1],
    ].map((values) => howOften(spreadOf(values))),
  ).toEqual(['always', 'never', 'sometimes']);
  expect(() => spreadOf([])).toThrow(RangeError);
});
