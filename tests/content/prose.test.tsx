// @vitest-environment happy-dom
import { describe, expect, test } from 'vitest';
import { mostNewTerms } from '../../src/lessons/front-matter.ts';
import { textsBelow } from '../../src/lessons/text-pieces.ts';
import {
  fillerIn,
  longestParagraph,
  longSentences,
  readingLevel,
  sentencesOf,
  unsourcedNumbers,
  unsupportedClaims,
  withoutNumbers,
  wordsOf,
} from './prose-rules.ts';
import { allLessons, type RenderedLesson } from './rendered-lessons.tsx';

const lessons = await allLessons();

/** Parts of a page whose words come from the head of the file, from the glossary or from the model. */
const made =
  '.num, .measure, figure, .prediction, .quiz, .at-home, .lesson-sources, .new-words, .for-teacher, h1, .lesson-question';

/** Paragraphs, list items and headings of the author's own text, numbers of the model taken out. */
function bodyTexts({ html }: RenderedLesson): string[] {
  const page = new DOMParser().parseFromString(`<main>${html}</main>`, 'text/html');
  for (const part of page.querySelectorAll(made)) part.replaceWith(part.matches('.num, .measure') ? 'N' : '');
  return [...page.querySelectorAll('p, li, h2, h3, td, th')]
    .map((part) => part.textContent?.trim() ?? '')
    .filter(Boolean);
}

/** Fields whose texts are no prose: codes, ids and works cited. */
const noProse = new Set(['standards', 'vocabulary', 'sources', 'grades']);
const headTexts = ({ file }: RenderedLesson): string[] =>
  Object.entries(file.frontmatter)
    .filter(([field]) => !noProse.has(field))
    .flatMap(([, value]) => textsBelow(value))
    .filter((text) => / /.test(text))
    .map(withoutNumbers);

const cases = lessons.map((lesson) => [lesson.language, lesson.name, lesson] as const);

describe.each(cases)('%s %s', (language, name, lesson) => {
  const bodyOf = bodyTexts(lesson);
  const texts = [...bodyOf, ...headTexts(lesson)];
  test('has no number without a source', () => {
    expect(texts.flatMap((text) => unsourcedNumbers(text, language))).toEqual([]);
  });
  test('makes no claim that is not supported, and has no filler', () => {
    expect(texts.flatMap(unsupportedClaims)).toEqual([]);
    expect(texts.flatMap(fillerIn)).toEqual([]);
  });
  test('keeps sentences and paragraphs short', () => {
    expect(texts.flatMap(longSentences)).toEqual([]);
    expect(bodyOf.filter((text) => wordsOf(text).length > longestParagraph)).toEqual([]);
  });
  test('brings no more than three new terms', () => {
    const { terms } = lesson.file.parts;
    expect(terms.length).toBeLessThanOrEqual(mostNewTerms);
    expect(lesson.file.frontmatter.vocabulary).toEqual(terms);
  });
  test('is as long as a lesson should be', () => {
    const body = bodyOf.flatMap(wordsOf).length;
    const { prediction, quiz, athome } = lesson.file.frontmatter;
    const all = body + textsBelow({ prediction, quiz, athome }).flatMap(wordsOf).length;
    expect(body).toBeGreaterThan(120);
    expect(all).toBeLessThan(1100);
    const level = readingLevel(bodyOf.filter((text) => sentencesOf(text).length > 1).join(' '), language);
    if (language === 'en' ? level > 8 : level < 55)
      console.warn(`${language} ${name}: ${language === 'en' ? 'reading grade' : 'reading ease'} ${level.toFixed(1)}`);
  });
});

describe('each rule fires on a planted fault', () => {
  test('a number without a source, in digits and in words', () => {
    expect(unsourcedNumbers('A boll holds 30 seeds.', 'en')).toHaveLength(1);
    expect(unsourcedNumbers('Upland has fibers of 1 1/8 inch.', 'en')).toHaveLength(1);
    expect(unsourcedNumbers('There are thousands of fibers.', 'en')).toHaveLength(1);
    expect(unsourcedNumbers('Una paca pesa quinientos kilos, mil más o menos.', 'es')).toHaveLength(1);
    expect(unsourcedNumbers('Hay 30 semillas.', 'es')).toHaveLength(1);
  });
  test('but not a year, a small counting word, the base of a share, or a thread’s name', () => {
    for (const text of [
      'In 1793 two brothers built one.',
      'Of every hundred fibers, N are short.',
      'A Ne 30 thread.',
      'Three bolls make it.',
    ])
      expect(unsourcedNumbers(text, 'en')).toEqual([]);
    expect(unsourcedNumbers('De cada cien fibras, N son cortas.', 'es')).toEqual([]);
  });
  test('a claim, a filler, a long sentence', () => {
    expect(unsupportedClaims('Long staple shrinks less.')).toHaveLength(1);
    expect(unsupportedClaims('El Pima no se arruga.')).toHaveLength(1);
    expect(fillerIn('Cotton is amazing.')).toHaveLength(1);
    expect(fillerIn('Look at that!')).toHaveLength(1);
    expect(longSentences(`${'word '.repeat(41)}.`)).toHaveLength(1);
    expect(longSentences(`${'word '.repeat(30)}. ${'Word '.repeat(30)}.`)).toEqual([]);
  });
  test('a hard text has a higher grade than an easy one', () => {
    const easy = 'The cat sat on the mat. It was warm.';
    const hard = 'Instrumental classification necessitates considerable standardization of environmental conditions.';
    expect(readingLevel(hard, 'en')).toBeGreaterThan(readingLevel(easy, 'en') + 10);
    expect(readingLevel('El gato come. Está en casa.', 'es')).toBeGreaterThan(
      readingLevel('La clasificación instrumental necesita condiciones ambientales normalizadas.', 'es'),
    );
  });
});
