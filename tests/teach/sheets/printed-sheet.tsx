import { renderToString } from 'preact-render-to-string';
import { makeFormats } from '../../../src/language/formats.ts';
import { sheetQuestions as enQuestions } from '../../../src/language/messages/en/sheet-questions.ts';
import { sheets as enPage } from '../../../src/language/messages/en/sheets.ts';
import { en } from '../../../src/language/messages/en.ts';
import { sheetQuestions as esQuestions } from '../../../src/language/messages/es/sheet-questions.ts';
import { sheets as esPage } from '../../../src/language/messages/es/sheets.ts';
import { es } from '../../../src/language/messages/es.ts';
import { KeySheet } from '../../../src/pages/teach/sheets/key-sheet.tsx';
import { writeQuestion } from '../../../src/pages/teach/sheets/question-text.ts';
import { Worksheet } from '../../../src/pages/teach/sheets/worksheet.tsx';
import type { Question } from '../../../src/teach/sheets/make-question.ts';

export const spoken = {
  en: { words: { questions: enQuestions, page: enPage }, formats: makeFormats('en', 'us', en) },
  es: { words: { questions: esQuestions, page: esPage }, formats: makeFormats('es', 'us', es) },
} as const;
export type SheetLanguage = keyof typeof spoken;

/** A question as it stands on the paper, and the answers as they stand on the key: nothing else is known of either. */
export interface PrintedQuestion {
  readonly text: string;
  /** Cells of the table's rows, head rows left out, in the order read. */
  readonly rows: readonly (readonly string[])[];
  readonly asks: readonly { readonly text: string; readonly rounding: string }[];
  readonly answers: readonly string[];
}

const plain = (html: string): string =>
  html
    .replace(/<[^>]*>/g, '')
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('\u00a0', ' ')
    .trim();
const partsOf = (html: string, pattern: RegExp): string[] => [...html.matchAll(pattern)].map(([, part]) => part!);
const firstOf = (html: string, pattern: RegExp): string => {
  const [part] = partsOf(html, pattern);
  if (part === undefined) throw new Error(`nothing printed like ${pattern}`);
  return part;
};

/** Markup of a pupil's sheet, and of its key, with one question. */
function drawnSheets(question: Question, language: SheetLanguage) {
  const { words, formats } = spoken[language];
  const written = [writeQuestion(question, words, formats)];
  const shared = { number: '1', label: '', written, words, bothSides: false } as const;
  return { sheet: renderToString(<Worksheet {...shared} />), key: renderToString(<KeySheet {...shared} />) };
}

/** Reads a question off the sheet that is printed and its answers off the key that is printed. */
export function printedQuestion(question: Question, language: SheetLanguage): PrintedQuestion {
  const { sheet, key } = drawnSheets(question, language);
  const asks = partsOf(sheet, /<p class="sheet-ask">(.*?)<\/p>/gs);
  return {
    text: plain(firstOf(sheet, /<p class="sheet-text">(.*?)<\/p>/gs)),
    rows: partsOf(sheet, /<tr>(.*?)<\/tr>/gs)
      .filter((row) => !row.includes('scope="col"'))
      .map((row) => partsOf(row, /<t[hd][^>]*>(.*?)<\/t[hd]>/gs).map(plain)),
    asks: asks.map((ask) => ({
      text: plain(ask.replace(/<b>.*?<\/b>/s, '').replace(/<i>.*?<\/i>/s, '')),
      rounding: plain(partsOf(ask, /<i>\((.*?)\)<\/i>/gs)[0] ?? ''),
    })),
    answers: partsOf(key, /<td class="number"><b>(.*?)<\/b>/gs).map(plain),
  };
}
