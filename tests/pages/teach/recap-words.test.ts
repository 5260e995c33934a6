import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { handouts } from '../../../src/language/messages/en/handouts.ts';
import { recap } from '../../../src/language/messages/en/recap.ts';
import { handouts as esHandouts } from '../../../src/language/messages/es/handouts.ts';
import { recap as esRecap } from '../../../src/language/messages/es/recap.ts';
import { lessonNames } from '../../../src/pages/lessons/lesson-file.ts';
import { projectFolder } from '../../architecture/source-files.ts';
import { catalogueLines } from '../../language/catalogue-lines.ts';

const lessonText = (name: string) => readFileSync(join(projectFolder, 'content/en/lessons', `${name}.mdx`), 'utf8');
const letters = (text: string) => text.toLowerCase().replace(/[^a-z]/g, '');

describe('the questions of the recap', () => {
  test('belong each to a lesson, offer three options or four with a reason each, and have the right one in all places', () => {
    const questions = Object.entries(recap.questions);
    for (const [lesson, { options, right }] of questions) {
      expect(lessonNames).toContain(lesson);
      expect(options.length).toBeGreaterThanOrEqual(3);
      expect(options[right]).toBeDefined();
      for (const { says, why } of options) expect(says.length * why.length).toBeGreaterThan(0);
    }
    expect(new Set(questions.map(([, { right }]) => right)).size).toBe(3);
  });
  test('are worded anew: none is asked so in its lesson', () => {
    for (const [lesson, { ask }] of Object.entries(recap.questions)) {
      expect(letters(lessonText(lesson))).not.toContain(letters(ask));
    }
  });
  test('have the same right option in both languages', () => {
    for (const [lesson, { right }] of Object.entries(recap.questions))
      expect(esRecap.questions[lesson as keyof typeof recap.questions].right).toBe(right);
  });
});

test('the words of handouts and recap have the same keys in both languages, no empty line, no exclamation, no bare word that misleads', () => {
  const english = catalogueLines({ handouts, recap });
  const spanish = catalogueLines({ handouts: esHandouts, recap: esRecap });
  const texts = (lines: Map<string, unknown>) =>
    [...lines].filter((line): line is [string, string] => typeof line[1] === 'string');
  expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
  for (const [key, line] of [...texts(english), ...texts(spanish)]) {
    expect(line.trim(), key).toBe(line);
    expect(line, key).not.toMatch(/!|¡|^$/);
  }
  const wrong =
    /(^|[^\p{L}])(usted|ustedes|vosotros|elija|toque|bala|balas|mota|mote|césped|muselina|pico)(?![\p{L}])/iu;
  expect(texts(spanish).filter(([, line]) => wrong.test(line))).toEqual([]);
});
