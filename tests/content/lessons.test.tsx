import { describe, expect, test } from 'vitest';
import { lessons as english } from '../../src/language/messages/en/lessons.ts';
import { lessons as spanish } from '../../src/language/messages/es/lessons.ts';
import { computedIds, computedOf } from '../../src/lessons/computed/all-computed.ts';
import { factNumber } from '../../src/lessons/fact-number.ts';
import { faultsOfMatter, type LessonMatter, lessonSchema } from '../../src/lessons/front-matter.ts';
import { textPieces } from '../../src/lessons/text-pieces.ts';
import { lessonComponents } from '../../src/pages/lessons/lesson-components.ts';
import { catalogueLines } from '../language/catalogue-lines.ts';
import { inTurn } from '../laws/runs.ts';
import { allLessons, renderLesson } from './rendered-lessons.tsx';

const lessons = await allLessons();
const of = (language: string) => lessons.filter((one) => one.language === language);
const pairs = of('en').map((en) => [en.name, en, of('es').find(({ name }) => name === en.name)!] as const);

/** All of a head that does not depend on the language. */
const bones = ({ prediction, quiz, athome, plan, ...matter }: LessonMatter) => ({
  number: matter.number,
  grades: matter.grades,
  minutes: matter.minutes,
  plan: plan.map(({ do: _, ...minutes }) => minutes),
  standards: matter.standards,
  vocabulary: matter.vocabulary,
  prediction: [prediction.of, prediction.low, prediction.high, prediction.step],
  quiz: quiz.map((question) => [question.of, question.options.map(({ times, right }) => [times, right])]),
  steps: athome.steps.length,
  screens: matter.minute.length,
  sources: matter.sources,
  numbers: Object.values({ prediction, quiz, athome, minute: matter.minute })
    .flatMap((part) => textPieces(JSON.stringify(part)))
    .filter(({ kind }) => kind !== 'text')
    .map((piece) => JSON.stringify(piece))
    .sort(),
});

describe('every lesson', () => {
  test('is there in both languages', () => {
    expect(of('en').length).toBeGreaterThanOrEqual(2);
    expect(of('es').map(({ name }) => name)).toEqual(of('en').map(({ name }) => name));
  });
  test.each(lessons.map((lesson) => [lesson.language, lesson.name, lesson] as const))(
    '%s %s has a head in order and uses no part that there is not',
    (_language, _name, { file }) => {
      expect(faultsOfMatter(file.frontmatter)).toEqual([]);
      expect(file.parts.components.filter((name) => !(name in lessonComponents))).toEqual([]);
      for (const wanted of ['Prediction', 'Quiz', 'AtHome', 'Sources']) expect(file.parts.components).toContain(wanted);
    },
  );
  test.each(pairs)('%s has the same parts, facts, numbers, terms and answers in both languages', (_name, en, es) => {
    const sorted = (lists: typeof en.file.parts) =>
      Object.fromEntries(Object.entries(lists).map(([key, list]) => [key, [...list].sort()]));
    expect(sorted(es.file.parts)).toEqual(sorted(en.file.parts));
    expect(bones(es.file.frontmatter)).toEqual(bones(en.file.frontmatter));
  });
  test('has a place of its own in the order', () => {
    const numbers = of('en').map(({ file }) => file.frontmatter.number);
    expect(new Set(numbers).size).toBe(numbers.length);
  });
  test('renders live too, in both unit systems', async () => {
    // Each lesson in both in the long run; otherwise in one of them, and its other language in the other.
    for (const [place, { name, language }] of lessons.entries())
      for (const units of inTurn(['us', 'metric'] as const, place + (language === 'es' ? of('en').length + 1 : 0))) {
        const { html } = await renderLesson(name, language, false, units);
        expect(/.{0,40}(NaN|undefined|\[\[).{0,40}/.exec(html)?.[0]).toBeUndefined();
      }
  });
});

describe('faults of a head are seen', () => {
  const good = of('en')[0]!.file.frontmatter;
  test.each([
    ['no question', { ...good, question: undefined }],
    ['an unknown standard', { ...good, standards: ['99.9'] }],
    ['minutes that do not add up', { ...good, minutes: { ...good.minutes, long: good.minutes.long + 1 } }],
    ['four new terms', { ...good, vocabulary: ['a', 'b', 'c', 'd'] }],
    ['three questions', { ...good, quiz: good.quiz.slice(0, 3) }],
    ['an option without a why', { ...good, quiz: [{ ask: 'x', options: [{ says: 'a', right: true }] }, ...good.quiz] }],
    [
      'two right options',
      {
        ...good,
        quiz: good.quiz.map((question) => ({
          ...question,
          options: question.options.map((option) =>
            question.of ? { ...option, times: 1 } : { ...option, right: true },
          ),
        })),
      },
    ],
    ['a long screen', { ...good, minute: ['word '.repeat(61)] }],
    ['a long minute', { ...good, minute: Array.from({ length: 3 }, () => 'word '.repeat(50)) }],
    ['a field of its own', { ...good, color: 'red' }],
  ])('%s', (_name, planted) => {
    expect(faultsOfMatter(planted)).not.toEqual([]);
  });
});

describe('numbers of lessons', () => {
  test('an unknown fact, and a way of writing that does not fit, are refused', () => {
    expect(() => factNumber('nowhere/facts.x')).toThrow(RangeError);
    expect(() => factNumber('length/reading-facts.arrayFacts.shortBelowMm', 'money')).toThrow(RangeError);
  });
  test('half an inch is written in the unit it is asked for', () => {
    const half = factNumber('length/reading-facts.arrayFacts.shortBelowMm', 'seam');
    expect(half.value).toBeCloseTo(0.5, 12);
  });
  test('every computed number is finite and told in both languages', () => {
    for (const id of computedIds) expect(Number.isFinite(computedOf(id)!.value())).toBe(true);
    for (const words of [english, spanish]) expect(Object.keys(words.computed).sort()).toEqual([...computedIds].sort());
  });
  test('every field of the head is told on the page for authors', () => {
    for (const { authors } of [english, spanish])
      expect(Object.keys(authors.fields).sort()).toEqual(Object.keys(lessonSchema.entries).sort());
  });
});

test('the words of the lesson pages have the same keys and placeholders in both languages', () => {
  const [en, es] = [catalogueLines(english), catalogueLines(spanish)];
  const names = (line = '') => [...new Set([...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!))].sort();
  expect([...es.keys()].filter((key) => !key.endsWith('.many')).sort()).toEqual([...en.keys()].sort());
  for (const [key, line] of en) expect([key, names(es.get(key))]).toEqual([key, names(line)]);
});
