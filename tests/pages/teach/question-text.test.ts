import { describe, expect, test } from 'vitest';
import { makeFormats } from '../../../src/language/formats.ts';
import { sheetGuide } from '../../../src/language/messages/en/sheet-guide.ts';
import { sheetQuestions as questions } from '../../../src/language/messages/en/sheet-questions.ts';
import { sheets as page } from '../../../src/language/messages/en/sheets.ts';
import { en } from '../../../src/language/messages/en.ts';
import { sheetGuide as esGuide } from '../../../src/language/messages/es/sheet-guide.ts';
import { sheetQuestions as esQuestions } from '../../../src/language/messages/es/sheet-questions.ts';
import { sheets as esPage } from '../../../src/language/messages/es/sheets.ts';
import { unitSystems } from '../../../src/language/unit-system.ts';
import { writeQuestion } from '../../../src/pages/teach/sheets/question-text.ts';
import { kindIds, makeQuestion } from '../../../src/teach/sheets/make-question.ts';
import { levels } from '../../../src/teach/sheets/question.ts';
import { catalogueLines } from '../../language/catalogue-lines.ts';
import { math, printedNumber } from '../../teach/sheets/printed-numbers.ts';

const formats = makeFormats('en', 'us', en);
const words = { questions, page };

/** A printed sum such as '(115 °F + 83 °F) ÷ 2 − 60 °F' worked out by a general library; its units fall away. */
function worked(sum: string): number {
  const bare = sum
    .replaceAll(',', '')
    .replaceAll('−', '-')
    .replaceAll('÷', '/')
    .replaceAll('×', '*')
    .replaceAll('$', '')
    .replace(/(\d)\u00a0[^\s)]+/g, '$1')
    .replace(/([\d.]+)%/g, '($1/100)');
  return Number(math.evaluate(bare));
}

/** Half of the last decimal shown, and what the decimals cut from the sums before can do. */
const slack = (text: string): number => {
  const digits = printedNumber(text);
  const decimals = digits.split('.')[1]?.length ?? 0;
  return 0.51 * 10 ** -decimals + 1e-3 * Math.abs(Number(digits));
};

describe('every line of every key comes to what it says (a general library works the printed sums)', () => {
  const cases = kindIds.flatMap((kind) => levels.map((level) => ({ kind, level })));
  test.each(cases)('$kind, level $level', ({ kind, level }) => {
    for (const units of unitSystems)
      for (const pupil of [3, 4, 5]) {
        const { asks } = writeQuestion(makeQuestion(kind, level, pupil, units), words, formats);
        for (const { working, answer } of asks) {
          expect(working.length).toBeGreaterThan(0);
          for (const { sum, result } of working) {
            expect(sum).not.toMatch(/[{}]/);
            if (result === page.belowZero) expect(worked(sum)).toBeLessThanOrEqual(0);
            else if (!result.startsWith('→')) {
              const isShare = result.endsWith('%') && !sum.endsWith('100');
              const shown = Number(printedNumber(result)) / (isShare ? 100 : 1);
              expect(Math.abs(worked(sum) - shown), `${sum} ${result}`).toBeLessThan(slack(result));
            }
          }
          expect(answer).toMatch(/\d/);
        }
      }
  });
});

describe('the words of the sheets', () => {
  const english = catalogueLines({ ...words, sheetGuide });
  const spanish = catalogueLines({ questions: esQuestions, page: esPage, sheetGuide: esGuide });
  const placeholders = (line: string) => [...new Set([...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name))].sort();
  test('have the same keys and placeholders in both languages, no empty line and no exclamation', () => {
    expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
    for (const [key, line] of english) expect(placeholders(spanish.get(key)!), key).toEqual(placeholders(line));
    for (const [key, line] of [...english, ...spanish]) {
      expect(line.trim(), key).toBe(line);
      // What needs nothing at hand says nothing.
      expect(line, key).not.toMatch(key.startsWith('sheetGuide.for.') ? /!|¡/ : /!|¡|^$/);
    }
  });
  test('ask, and do not tell what to press: two such verbs a task at most (step lists narrow what is tried: Chamberlain, Lancaster, Parson, Perkins, Chem. Educ. Res. Pract. 2014, 15, 628)', () => {
    const verbs =
      /\b(click|drag|tap|type|press|select|choose|open|scroll|swipe|enter|hover|haz clic|arrastra|oprime|toca|elige|selecciona|abre|escribe|pulsa|presiona|desliza)\b/gi;
    for (const each of [questions, esQuestions])
      for (const kind of kindIds)
        for (const level of levels) {
          const task = [...catalogueLines({ text: each.texts[kind][level], asks: each.asks[kind] }).values()].join(' ');
          expect(task.match(verbs)?.length ?? 0, `${kind} ${level}`).toBeLessThanOrEqual(2);
        }
    for (const [key, line] of [...english, ...spanish])
      expect(line.match(/\b(click|drag|tap|haz clic|arrastra|oprime|toca|pulsa)\b/gi) ?? [], key).toHaveLength(0);
  });
  test('address nobody as usted or vosotros and use no word that misleads alone', () => {
    const wrong =
      /(^|[^\p{L}])(usted|ustedes|vosotros|elija|toque|bala|balas|mota|mote|césped|muselina|pico)(?![\p{L}])/iu;
    expect([...spanish].filter(([, line]) => wrong.test(line))).toEqual([]);
    const british = /\b(fibres?|colours?|metres?|centimetres?|grey)\b/i;
    expect([...english].filter(([, line]) => british.test(line))).toEqual([]);
    const halves = [...spanish].filter(([, line]) => line.includes('?') !== line.includes('¿'));
    expect(halves).toEqual([]);
  });
});
