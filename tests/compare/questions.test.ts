import { describe, expect, test } from 'vitest';
import { allQuestions, questionOf } from '../../src/compare/questions/all-questions.ts';
import { fewSeeds, howOften, spreadOf } from '../../src/compare/questions/many-seasons.ts';
import { answerQuestion, type Question, runAsked } from '../../src/compare/questions/question.ts';
import { withFactsMoved } from '../../src/doubt/move-facts.ts';
import { ask as en } from '../../src/language/messages/en/ask.ts';
import { en as enMessages } from '../../src/language/messages/en.ts';
import { ask as es } from '../../src/language/messages/es/ask.ts';
import { es as esMessages } from '../../src/language/messages/es.ts';
import { makeWords } from '../../src/language/words.ts';
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

/** The sentences of a question in English, and in Spanish and metric, from its first few runs where it asks pairs of seasons. */
function sentencesOf(question: Question): string[] {
  const runs = question.runs.length === 2 * fewSeeds.length ? question.runs.slice(0, 4) : question.runs;
  const answer = question.answer(runs.map(runAsked));
  return [readers[0], readers[3]].map(({ words, asked }) =>
    answerText(answer, question.runs[0]!, asked.questions[question.id]!, words, asked).sentences.join(' '),
  );
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
  test('every sentence is filled, whatever the verdict, in both languages and both unit systems', () => {
    for (const { words, asked } of readers) {
      const said = asked.questions[id]!;
      const lines = Object.keys(said.answers).flatMap((verdict) => {
        const { about, sentences, limits } = answerText(
          { ...answerOf(id), verdict },
          question.runs[0]!,
          said,
          words,
          asked,
        );
        return [about, ...sentences, ...limits];
      });
      for (const line of lines) {
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

  test.each(question.decidedBy)('$name of the model moved, the sentences say something else', ({ fact }) => {
    const before = sentencesOf(question);
    const tries = fact.range ?? [fact.value * 1.2];
    const changed = [...tries].reverse().some((to) => {
      const after = withFactsMoved([{ fact, to }], () => sentencesOf(question));
      return after.every((sentences, reader) => sentences !== before[reader]);
    });
    expect(changed).toBe(true);
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
