import type { Fraction } from 'mathjs';
import { type UnitSystem, unitSystems } from '../../../src/language/unit-system.ts';
import type { KindId, Question } from '../../../src/teach/sheets/make-question.ts';
import type { Level } from '../../../src/teach/sheets/question.ts';
import { exactly, math, printedNumber, readPrinted, readRule, roundedAs } from './printed-numbers.ts';
import { type PrintedQuestion, printedQuestion, type SheetLanguage, spoken } from './printed-sheet.tsx';
import { sumsOf } from './sums.ts';

type Numbers = Readonly<Record<string, string>>;
type InUnits = string | Readonly<Record<UnitSystem, string>>;
const inUnits = (text: InUnits, units: UnitSystem) => (typeof text === 'string' ? text : text[units]);

/** The numbers of the printed question, by the names that its sentence or its table's columns give them. */
function numbersOf({ text, rows }: PrintedQuestion, template: string): Numbers {
  const { project: _name, ...texts } = readPrinted(text, template);
  const numbers = Object.fromEntries(Object.entries(texts).map(([name, part]) => [name, printedNumber(part)]));
  for (const [day, high, low] of rows.filter((row) => row.length === 3) as [string, string, string][]) {
    numbers[`high${day}`] = printedNumber(high);
    numbers[`low${day}`] = printedNumber(low);
  }
  return numbers;
}

/** The last code of the printed chart that a length reaches. */
function codeOf(rows: PrintedQuestion['rows'], inches: Fraction): Fraction {
  const reached = rows.filter(([from]) => math.fraction(printedNumber(from!)).compare(inches) <= 0);
  return math.fraction(reached.at(-1)![1]!);
}

/** Answers of the staple questions in the order asked: thirty-seconds of an inch, and a chart that is read. */
function stapleAnswers(level: Level, numbers: Numbers, { rows, asks }: PrintedQuestion): Fraction[] {
  const given = Object.values(numbers);
  if (level === 1)
    return given.map((code, i) => roundedAs(readRule(asks[i]!.rounding), exactly('x / 32', { x: code })));
  if (level === 2) return given.map((length) => codeOf(rows, math.fraction(length)));
  return given.flatMap((length, i) => {
    const inches = roundedAs(readRule(asks[2 * i]!.rounding), exactly('x * 10 / 254', { x: length }));
    return [inches, codeOf(rows, inches)];
  });
}

/** The name of a thing asked, by the words it is asked in. */
function askedName(kind: KindId, text: string, units: UnitSystem, language: SheetLanguage): string {
  const asked: Readonly<Record<string, InUnits>> = spoken[language].words.questions.asks[kind];
  const found = Object.entries(asked).filter(([, words]) => inUnits(words, units) === text);
  return found.length === 1 ? found[0]![0] : found.map(([name]) => name).join('|');
}

/** Names of the asks of a question as printed; two of the layout are asked in the same words, one after the other. */
function namesOf(printed: PrintedQuestion, kind: KindId, units: UnitSystem, language: SheetLanguage): string[] {
  const seen = new Map<string, number>();
  return printed.asks.map(({ text }) => {
    const names = askedName(kind, text, units, language).split('|');
    const before = seen.get(text) ?? 0;
    seen.set(text, before + 1);
    return names[before]!;
  });
}

/**
 * What the key prints, and what a pupil who has nothing but the printed sheet works out: numbers, table and rule of
 * rounding are read from the paper, and the sums are written beside it in a general library's language.
 */
export function answersOf({ kind, level, units }: Question, printed: PrintedQuestion, language: SheetLanguage) {
  const template: InUnits = spoken[language].words.questions.texts[kind][level];
  const numbers = numbersOf(printed, inUnits(template, units));
  const recomputed =
    kind === 'staple'
      ? stapleAnswers(level, numbers, printed)
      : namesOf(printed, kind, units, language).map((name, i) =>
          roundedAs(readRule(printed.asks[i]!.rounding), exactly(sumsOf(kind, level, units)[name]!, numbers)),
        );
  const written = (value: Fraction) => value.toFraction();
  return {
    printed: printed.answers.map((answer) => written(math.fraction(printedNumber(answer)))),
    recomputed: recomputed.map(written),
  };
}

export const answersInPrint = (question: Question, language: SheetLanguage) =>
  answersOf(question, printedQuestion(question, language), language);

/** Every kind and level in both unit systems. */
export const casesOf = (kinds: readonly KindId[], levels: readonly Level[]) =>
  kinds.flatMap((kind) => levels.flatMap((level) => unitSystems.map((units) => ({ kind, level, units }))));
