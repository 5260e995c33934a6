import { describe, expect, test } from 'vitest';
import type { QuizQuestion } from '../../../../src/lessons/front-matter.ts';
import { lessonNames, loadLesson } from '../../../../src/pages/lessons/lesson-file.ts';
import { arrangedQuiz } from '../../../../src/pages/lessons/parts/quiz-order.ts';

const quizzes = await Promise.all(
  lessonNames.map(async (name) => ({ name, quiz: (await loadLesson('en', name))!.frontmatter.quiz })),
);
const rightPlace = ({ of, options }: QuizQuestion): number =>
  options.findIndex(({ right, times }) => (of === undefined ? right === true : times === 1));
/** Places of the right answers of all questions of one kind. */
const places = (numbers: boolean): number[] =>
  quizzes.flatMap(({ name, quiz }) =>
    arrangedQuiz(name, quiz)
      .filter(({ of }) => (of !== undefined) === numbers)
      .map(rightPlace),
  );
const shareOf = (place: number, all: readonly number[]): number =>
  all.filter((one) => one === place).length / all.length;

describe('the options of a quiz', () => {
  test('are all there, each once', () => {
    for (const { name, quiz } of quizzes)
      arrangedQuiz(name, quiz).forEach(({ options }, index) => {
        expect(new Set(options)).toEqual(new Set(quiz[index]!.options));
        expect(options).toHaveLength(quiz[index]!.options.length);
      });
  });
  test('stand in one order in both languages and however often they are asked for', async () => {
    for (const { name, quiz } of quizzes) {
      const order = (from: readonly QuizQuestion[]) =>
        arrangedQuiz(name, from).map(({ options }, question) =>
          options.map((option) => from[question]!.options.indexOf(option)),
        );
      const spanish = (await loadLesson('es', name))!.frontmatter.quiz;
      expect(order(quiz)).toEqual(order(quiz));
      expect(order(spanish)).toEqual(order(quiz));
    }
  });
  test('hang on the name of the lesson', () => {
    const { quiz } = quizzes[0]!;
    const orders = ['one', 'two', 'three', 'four'].map((name) => JSON.stringify(arrangedQuiz(name, quiz)));
    expect(new Set(orders).size).toBeGreaterThan(1);
  });
  test('are numbers from small to large', () => {
    for (const { name, quiz } of quizzes)
      for (const { of, options } of arrangedQuiz(name, quiz)) {
        const times = options.map((option) => option.times ?? 0);
        if (of !== undefined) expect(times).toEqual([...times].sort((a, b) => a - b));
      }
  });
});

describe('the place of the right answer', () => {
  test('is each of the first three for a fair share of the questions in words: a third, give or take a sixth', () => {
    for (const place of [0, 1, 2]) expect(Math.abs(shareOf(place, places(false)) - 1 / 3)).toBeLessThan(1 / 6);
  });
  test('is not one and the same through any lesson', () => {
    for (const { name, quiz } of quizzes) {
      const ofWords = arrangedQuiz(name, quiz).filter(({ of }) => of === undefined);
      if (ofWords.length > 1) expect(new Set(ofWords.map(rightPlace)).size).toBeGreaterThan(1);
    }
  });
  test('is the smallest or the largest number more often than one between', () => {
    expect(shareOf(1, places(true))).toBeLessThan(1 / 2);
  });
});
