import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { drawingMm } from '../../../src/pages/teach/sheets/figures/drawing.tsx';
import { figureOf } from '../../../src/pages/teach/sheets/figures/figure-of.ts';
import { writeQuestion } from '../../../src/pages/teach/sheets/question-text.ts';
import { questionMm, sidesOf } from '../../../src/pages/teach/sheets/sides.ts';
import { kindIds, makeQuestion } from '../../../src/teach/sheets/make-question.ts';
import { levels } from '../../../src/teach/sheets/question.ts';
import { spoken } from '../../teach/sheets/printed-sheet.tsx';
import { casesOf } from '../../teach/sheets/recompute.ts';

describe('sides of a sheet', () => {
  test('take every question once, in order, evenly, and no more sides than needed', () => {
    expect(sidesOf([50, 50, 50])).toEqual([[0, 1, 2]]);
    expect(sidesOf([100, 100, 100, 100])).toEqual([
      [0, 1],
      [2, 3],
    ]);
    // The first three would fit on the first side; evenly the rule of rounding and the first stand alone.
    expect(sidesOf([120, 60, 40, 60])).toEqual([[0], [1, 2, 3]]);
    expect(sidesOf([300])).toEqual([[0]]);
    for (const heights of [[90, 90, 90, 30, 70, 20], Array.from({ length: 10 }, () => 77)])
      expect(sidesOf(heights).flat()).toEqual(heights.map((_, i) => i));
  });
});

describe('a drawing shows numbers of its question only, and none that is asked', () => {
  const drawn = casesOf(kindIds, levels).filter(({ kind, level }) => figureOf(kind, level) !== null);
  test('there are drawings of grain and layout at every level', () => {
    for (const level of levels) expect(figureOf('layout', level)).not.toBeNull();
  });
  test.each(drawn)('$kind, level $level, $units', ({ kind, level, units }) => {
    const Figure = figureOf(kind, level)!;
    for (const language of ['en', 'es'] as const)
      for (const pupil of [1, 2, 3, 4, 5, 6, 7, 8]) {
        const { words, formats } = spoken[language];
        const question = writeQuestion(makeQuestion(kind, level, pupil, units), words, formats);
        const markup = renderToString(
          <Figure labels={question.labels} sizes={question.sizes} words={words.questions.drawn} />,
        );
        expect(markup).not.toMatch(/NaN|undefined|Infinity/);
        for (const [, text] of markup.matchAll(/<text[^>]*>(.*?)<\/text>/g))
          for (const number of text!.match(/\d[\d,.]*/g) ?? []) expect(question.text, text).toContain(number);
        // Words begin within the frame, which clips.
        for (const [, x, y] of markup.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"/g)) {
          expect(Number(x)).toBeGreaterThan(2);
          expect(Number(x)).toBeLessThan(drawingMm.width - 2);
          expect(Number(y)).toBeGreaterThan(2);
          expect(Number(y)).toBeLessThan(drawingMm.height);
        }
        expect(questionMm(question, true)).toBeLessThan(259 - 30);
      }
  });
});
