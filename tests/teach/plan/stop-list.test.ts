import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { questionOf } from '../../../src/compare/questions/all-questions.ts';
import { stopList } from '../../../src/teach/plan/stop-list.ts';
import { projectFolder } from '../../architecture/source-files.ts';

const glossary: Record<string, unknown> = Object.assign(
  {},
  ...readdirSync(join(projectFolder, 'content/en/glossary')).map((name) =>
    JSON.parse(readFileSync(join(projectFolder, 'content/en/glossary', name), 'utf8')),
  ),
);
const lessons = readdirSync(join(projectFolder, 'content/en/lessons'));

test('what a stop opens is there: its question, its lesson, its words in the glossary', () => {
  for (const { id, aim, vocabulary } of stopList) {
    if (aim.kind === 'question') expect([id, questionOf(aim.question)?.id]).toEqual([id, aim.question]);
    if (aim.kind === 'lesson') expect(lessons).toContain(`${aim.lesson}.mdx`);
    for (const word of vocabulary) expect([id, word, word in glossary]).toEqual([id, word, true]);
    // No more than three new terms at once, as in the lessons.
    expect(vocabulary.length).toBeLessThanOrEqual(3);
  }
});

test('no stop’s least is above its usual, nor its usual above its most', () => {
  for (const { minutes } of stopList) {
    expect(minutes.least).toBeLessThanOrEqual(minutes.usual);
    expect(minutes.usual).toBeLessThanOrEqual(minutes.most);
  }
});
