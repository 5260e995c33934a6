import { describe, expect, test } from 'vitest';
import { faultsOfMatter } from '../../src/lessons/front-matter.ts';
import { allLessons, renderLesson } from './rendered-lessons.tsx';

const lessons = await allLessons();

describe('every lesson', () => {
  test('is there in both languages', () => {
    const names = (language: string) => lessons.filter((one) => one.language === language).map(({ name }) => name);
    expect(names('en').length).toBeGreaterThanOrEqual(2);
    expect(names('es')).toEqual(names('en'));
  });
  test.each(lessons.map((lesson) => [lesson.language, lesson.name, lesson] as const))(
    '%s %s has a head in order',
    (_language, _name, { file }) => {
      expect(faultsOfMatter(file.frontmatter)).toEqual([]);
    },
  );
  test('renders live too, in both unit systems', async () => {
    for (const { name, language } of lessons) {
      const us = await renderLesson(name, language, false, 'us');
      const metric = await renderLesson(name, language, false, 'metric');
      expect(metric.html).not.toBe(us.html);
    }
  });
});
