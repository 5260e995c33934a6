import { fill } from '../../../language/fill.ts';
import type { Formats } from '../../../language/formats.ts';
import type { sheetQuestions } from '../../../language/messages/en/sheet-questions.ts';
import type { sheets } from '../../../language/messages/en/sheets.ts';
import type { KindId, Question } from '../../../teach/sheets/make-question.ts';
import type { Amount, Ask, Level, Rounding, Step } from '../../../teach/sheets/question.ts';

/** The words of the questions and of the pages around them. */
export interface SheetWords {
  readonly questions: typeof sheetQuestions;
  readonly page: typeof sheets;
}

/** A table of a question, written. */
export interface WrittenTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
/** One line of an answer key: what is worked out, the sum in numbers, and what it comes to. */
export interface WrittenStep {
  /** Empty for the answer's own line. */
  readonly name: string;
  readonly sum: string;
  readonly result: string;
}
/** One thing asked, with how to round it; the answer and the working are for the key alone. */
export interface WrittenAsk {
  readonly text: string;
  readonly rounding: string;
  readonly unit: string;
  readonly answer: string;
  readonly working: readonly WrittenStep[];
}
/** A question as it is printed. */
export interface WrittenQuestion {
  readonly kind: KindId;
  readonly level: Level;
  readonly title: string;
  readonly text: string;
  readonly table: WrittenTable | null;
  readonly asks: readonly WrittenAsk[];
  /** The given numbers by name, for a drawing: as written, and as they are. */
  readonly labels: Readonly<Record<string, string>>;
  readonly sizes: Readonly<Record<string, number>>;
}

/** Differences that a bale's class makes carry their sign. */
const signed: ReadonlySet<string> = new Set(['difference']);

/** A number with its unit, as it is printed. */
function amountText({ value, decimals, unit }: Amount, formats: Formats): string {
  if (unit === 'percent') return formats.percent(value, decimals);
  if (unit === 'dollars') return formats.money(value, decimals);
  const number = formats.number(value, decimals);
  return unit === 'none' ? number : `${number}\u00a0${unit}`;
}

const givenText = (name: string, given: Amount, formats: Formats): string =>
  `${signed.has(name) && given.value >= 0 ? '+' : ''}${amountText(given, formats)}`;

/** What a line of working comes to: as many decimals as it has, and a sign that it goes on where they were cut. */
function resultText({ result, neverBelowZero, sum }: Step, formats: Formats): string {
  const rounded = Number(result.value.toFixed(result.decimals));
  const goesOn = Math.abs(result.value - rounded) > 1e-9;
  let decimals = result.decimals;
  while (decimals > 0 && Math.abs(Number(result.value.toFixed(decimals - 1)) - result.value) < 1e-9) decimals--;
  const isNothing = neverBelowZero && result.value === 0 && sum.length > 0;
  const text = amountText({ ...result, decimals: isNothing ? 0 : decimals }, formats);
  // What is read off a chart or chosen is not equal to what it was compared with.
  if (/[≥≤]/.test(sum)) return `→ ${text}`;
  return goesOn ? `≈ ${text}` : `= ${text}`;
}

function roundingText({ way, step, decimals }: Rounding, { page }: SheetWords, formats: Formats): string {
  const { roundings } = page;
  if (way === 'exact') return '';
  if (way === 'down') return roundings.down;
  if (way === 'up') return step === 1 ? roundings.up : fill(roundings.upTo, { step: formats.number(step, decimals) });
  return decimals === 0 ? roundings.whole : formats.plural(decimals, roundings.decimals, 0);
}

type InUnits = string | { readonly us: string; readonly metric: string };
const inUnits = (text: InUnits, units: Question['units']): string => (typeof text === 'string' ? text : text[units]);

/** Words of a line: what is asked where that is asked, else its own name. */
function stepName(question: Question, { name }: Step, { questions }: SheetWords): string {
  const day = /^heat(\d)$/.exec(name);
  if (day) return fill(questions.steps.heat, { day: day[1]! });
  const own: Readonly<Record<string, string>> = questions.steps;
  const asked: Readonly<Record<string, InUnits>> = questions.asks[question.kind];
  return inUnits(asked[name] ?? own[name] ?? name, question.units);
}

function writeAsk(ask: Ask, question: Question, words: SheetWords, formats: Formats): WrittenAsk {
  const texts: Record<string, string> = {};
  for (const [name, given] of Object.entries(question.given)) texts[name] = givenText(name, given, formats);
  for (const { steps } of question.asks)
    for (const { name, result } of steps) texts[name] = resultText({ name, result, sum: '' }, formats).slice(2);
  // Later sums use what was read or counted, not what the division gave: whole strips, a length to the hundredth.
  for (const { name, answer, rounding } of question.asks)
    if (rounding.way === 'down' || rounding.way === 'up' || name.endsWith('Inches'))
      texts[name] = amountText(answer, formats);
  const asked: Readonly<Record<string, InUnits>> = words.questions.asks[question.kind];
  // What an ask before has worked out is not worked out again.
  const before = question.asks
    .slice(0, question.asks.indexOf(ask))
    .flatMap(({ steps }) => steps.map(({ name }) => name));
  const isNew = ({ name }: Step): boolean => !before.includes(name);
  return {
    text: inUnits(asked[ask.name]!, question.units),
    rounding: roundingText(ask.rounding, words, formats),
    unit:
      ask.answer.unit === 'none'
        ? ''
        : ask.answer.unit === 'percent'
          ? '%'
          : ask.answer.unit === 'dollars'
            ? '$'
            : ask.answer.unit,
    answer: amountText(ask.answer, formats),
    working: ask.steps.filter(isNew).map((step) => ({
      name: step.name === ask.name ? '' : stepName(question, step, words),
      sum: fill(step.sum, texts),
      result: step.neverBelowZero && step.result.value === 0 ? words.page.belowZero : resultText(step, formats),
    })),
  };
}

/**
 * A question in words.
 * @param formats of the sheet's language; its numbers carry their own units, so that of the formats does not matter
 */
export function writeQuestion(question: Question, words: SheetWords, formats: Formats): WrittenQuestion {
  const { kind, level, given, table, named, units } = question;
  const { questions } = words;
  const template: InUnits = questions.texts[kind][level];
  const projects: Readonly<Record<string, string>> = questions.projects;
  const values: Record<string, string> = {};
  for (const [name, amount] of Object.entries(given)) values[name] = givenText(name, amount, formats);
  for (const [name, id] of Object.entries(named ?? {})) values[name] = projects[id] ?? id;
  return {
    kind,
    level,
    title: questions.kinds[kind],
    text: fill(inUnits(template, units), values),
    table: table
      ? {
          heads: Object.values(questions.tables[table.name]),
          rows: table.rows.map((names) => names.map((name) => values[name]!)),
        }
      : null,
    asks: question.asks.map((ask) => writeAsk(ask, question, words, formats)),
    labels: values,
    sizes: Object.fromEntries(Object.entries(given).map(([name, { value }]) => [name, value])),
  };
}
