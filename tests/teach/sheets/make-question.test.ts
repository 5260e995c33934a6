import { describe, expect, test } from 'vitest';
import { kindIds, makeQuestion, type Question } from '../../../src/teach/sheets/make-question.ts';
import { type Amount, levels } from '../../../src/teach/sheets/question.ts';
import { long } from '../../laws/runs.ts';
import { printedQuestion } from './printed-sheet.tsx';
import { answersInPrint, answersOf, casesOf } from './recompute.ts';

/** Sheets asked of every kind in turn: as many as the seasons behind them that are kept, so that each runs once. */
const sheetsInBlock = long ? 20 : 10;
const blocks = Array.from({ length: long ? 500 / sheetsInBlock : 1 }, (_, i) => ({
  first: 1 + sheetsInBlock * i,
  last: sheetsInBlock * (i + 1),
}));
const languages = ['en', 'es'] as const;
const cases = casesOf(kindIds, levels);

describe('every answer of the printed key is what the printed question gives (exact fractions of a general library)', () => {
  test.each(blocks.flatMap((block) => cases.map((each) => ({ ...block, ...each }))))(
    '$kind, level $level, $units, in both languages: sheets $first to $last',
    ({ kind, level, units, first, last }) => {
      for (let pupil = first; pupil <= last; pupil++) {
        const question = makeQuestion(kind, level, pupil, units);
        for (const language of languages) {
          const { printed, recomputed } = answersInPrint(question, language);
          expect(printed.length).toBe(question.asks.length);
          expect(printed, `sheet ${pupil}, ${language}`).toEqual(recomputed);
        }
      }
    },
  );
});

/** Numbers that a question tells and no answer needs: how heavy a heavy bale is, how many pieces, days, rows of a chart. */
const beside = /^(limit|pieces|day\d|from\d+|code\d+)$/;
const agrees = ({ printed, recomputed }: ReturnType<typeof answersOf>) =>
  JSON.stringify(printed) === JSON.stringify(recomputed);

describe('a planted fault is found', () => {
  test.each(cases)('$kind, level $level, $units', ({ kind, level, units }) => {
    const question = makeQuestion(kind, level, 7, units);
    const inPrint = (wrong: Question) => agrees(answersInPrint(wrong, 'en'));
    expect(inPrint(question)).toBe(true);
    question.asks.forEach(({ answer, rounding }, i) => {
      // An answer one step beside the right one.
      const beyond: Amount = { ...answer, value: answer.value + Math.max(rounding.step, 10 ** -answer.decimals) };
      const asks = question.asks.map((ask, at) => (at === i ? { ...ask, answer: beyond } : ask));
      expect(inPrint({ ...question, asks }), `answer ${i}`).toBe(false);
    });
    for (const [name, given] of Object.entries(question.given).filter(([each]) => !beside.test(each))) {
      // A number printed that the answer was not worked out with; a base three times as warm would leave no heat at all.
      const times = name === 'base' ? 1.1 : 3;
      const other: Amount = { ...given, value: Number((given.value * times).toFixed(given.decimals)) };
      expect(inPrint({ ...question, given: { ...question.given, [name]: other } }), name).toBe(false);
    }
    const printed = printedQuestion(question, 'en');
    // A rule of rounding that is not the one the answer was rounded by.
    const asks = printed.asks.map((ask) => ({ ...ask, rounding: 'up to the next 1000' }));
    if (kind !== 'staple' || level === 1) expect(agrees(answersOf(question, { ...printed, asks }, 'en'))).toBe(false);
  });
});

describe('sheets', () => {
  test.each(cases)('$kind, level $level, $units: no two of thirty pupils read the same', ({ kind, level, units }) => {
    const read = Array.from({ length: 30 }, (_, i) => {
      const { text, rows } = printedQuestion(makeQuestion(kind, level, 1 + i, units), 'en');
      return JSON.stringify([text, rows]);
    });
    expect(new Set(read).size).toBe(30);
  });

  test('the number of a sheet brings its questions back, and it can be any the page allows', () => {
    for (const pupil of [1, 17, 9999])
      expect(makeQuestion('trace', 3, pupil, 'us')).toEqual(makeQuestion('trace', 3, pupil, 'us'));
  });

  test('no number is missing, not a number or below zero where it is weighed', () => {
    for (const { kind, level, units } of cases) {
      const { given, asks } = makeQuestion(kind, level, 5, units);
      for (const [name, { value }] of Object.entries(given)) {
        expect(Number.isFinite(value), name).toBe(true);
        if (name !== 'difference' && !name.startsWith('low') && !name.startsWith('high'))
          expect(value, `${kind} ${level} ${name}`).toBeGreaterThan(0);
      }
      for (const { name, answer } of asks) expect(Number.isFinite(answer.value), name).toBe(true);
    }
  });
});
