import { describe, expect, test } from 'vitest';
import { makeFormats } from '../../../src/language/formats.ts';
import { sheetQuestions as enQuestions } from '../../../src/language/messages/en/sheet-questions.ts';
import { sheets as enPage } from '../../../src/language/messages/en/sheets.ts';
import { en } from '../../../src/language/messages/en.ts';
import { sheetQuestions as esQuestions } from '../../../src/language/messages/es/sheet-questions.ts';
import { sheets as esPage } from '../../../src/language/messages/es/sheets.ts';
import { es } from '../../../src/language/messages/es.ts';
import { type UnitSystem, unitSystems } from '../../../src/language/unit-system.ts';
import { type SheetWords, type WrittenQuestion, writeQuestion } from '../../../src/pages/teach/sheets/question-text.ts';
import { type KindId, kindIds, makeQuestion, type Question } from '../../../src/teach/sheets/make-question.ts';
import { type Level, levels } from '../../../src/teach/sheets/question.ts';
import { exactly, printedNumber, readPrinted, roundedTo } from './printed-numbers.ts';
import { sumsOf } from './sums.ts';

/** A case of the long run works out 500 sheets. */
const longestMs = 300_000;
const pupils = Array.from({ length: process.env.SEAMFIELD_LONG ? 500 : 20 }, (_, i) => 1 + i);
const spoken = {
  en: { words: { questions: enQuestions, page: enPage }, formats: makeFormats('en', 'us', en) },
  es: { words: { questions: esQuestions, page: esPage }, formats: makeFormats('es', 'us', es) },
} as const;
type Spoken = { readonly words: SheetWords; readonly formats: ReturnType<typeof makeFormats> };

const cases = kindIds.flatMap((kind) =>
  levels.flatMap((level) => unitSystems.map((units) => ({ kind, level, units }))),
);

function templateOf({ questions }: SheetWords, kind: KindId, level: Level, units: UnitSystem): string {
  const template: string | Readonly<Record<UnitSystem, string>> = questions.texts[kind][level];
  return typeof template === 'string' ? template : template[units];
}

/** Every number of the printed question, by the name that its text or its table's column gives it. */
function printedNumbers(written: WrittenQuestion, template: string): Record<string, string> {
  const { project: _name, ...texts } = readPrinted(written.text, template);
  const numbers = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, printedNumber(text)]));
  if (written.table?.heads.length === 3)
    for (const [day, high, low] of written.table.rows as [string, string, string][]) {
      numbers[`high${day}`] = printedNumber(high);
      numbers[`low${day}`] = printedNumber(low);
    }
  return numbers;
}

/** The last code of the printed chart that a length reaches, both in hundredths of an inch. */
const codeOf = (rows: readonly (readonly string[])[], hundredths: number): string =>
  rows.filter(([from]) => Math.round(100 * Number(printedNumber(from!))) <= hundredths).at(-1)![1]!;

/** Answers of the staple questions, in the order asked. */
function stapleAnswers(level: Level, numbers: Record<string, string>, written: WrittenQuestion): string[] {
  const given = Object.values(numbers);
  if (level === 1) return given.map((code) => roundedTo(exactly('x / 32', { x: code }), 3));
  const rows = written.table!.rows;
  if (level === 2) return given.map((length) => codeOf(rows, Math.round(100 * Number(length))));
  return given.flatMap((length) => {
    const inches = roundedTo(exactly('x * 10 / 254', { x: length }), 2);
    return [inches, codeOf(rows, Math.round(100 * Number(inches)))];
  });
}

function recomputed(question: Question, { words, formats }: Spoken) {
  const { kind, level, units } = question;
  const written = writeQuestion(question, words, formats);
  const numbers = printedNumbers(written, templateOf(words, kind, level, units));
  const answers =
    kind === 'staple'
      ? stapleAnswers(level, numbers, written)
      : question.asks.map(({ name, answer }) =>
          roundedTo(exactly(sumsOf(kind, level, units)[name]!, numbers), answer.decimals),
        );
  return { printed: written.asks.map(({ answer }) => printedNumber(answer)), answers };
}

describe('every answer is what the numbers printed in the question give (exact fractions of a general library)', () => {
  test.each(cases)(
    '$kind, level $level, $units',
    ({ kind, level, units }) => {
      for (const pupil of pupils) {
        // Every fourth also in Spanish: its text carries the same numbers.
        for (const language of pupil % 4 === 0 ? (['en', 'es'] as const) : (['en'] as const)) {
          const { printed, answers } = recomputed(makeQuestion(kind, level, pupil, units), spoken[language]);
          expect(printed, `sheet ${pupil}`).toEqual(answers);
        }
      }
    },
    longestMs,
  );
});

describe('sheets', () => {
  test.each(cases)(
    '$kind, level $level, $units: no two of thirty pupils have the same numbers',
    ({ kind, level, units }) => {
      const given = Array.from({ length: 30 }, (_, i) =>
        JSON.stringify(makeQuestion(kind, level, 101 + i, units).given),
      );
      expect(new Set(given).size).toBe(30);
    },
  );

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
