import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { en } from '../../../src/language/messages/en.ts';
import { es } from '../../../src/language/messages/es.ts';
import { makeWords } from '../../../src/language/words.ts';
import { stopText } from '../../../src/pages/teach/stop-text.ts';
import { loadTeachWords } from '../../../src/pages/teach/use-teach-words.ts';
import { stopList } from '../../../src/teach/plan/stop-list.ts';
import { projectFolder } from '../../architecture/source-files.ts';
import { catalogueLines } from '../../language/catalogue-lines.ts';

const [teachEn, teachEs] = [await loadTeachWords('en'), await loadTeachWords('es')];
const english = catalogueLines(teachEn.said);
const spanish = catalogueLines(teachEs.said);
const placeholders = (line: string): string[] => [...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!).sort();

describe.each([
  ['en', makeWords('en', 'us', en), teachEn],
  ['es', makeWords('es', 'metric', es), teachEs],
] as const)('in %s', (language, words, teach) => {
  test('every stop has a name, a question that ends as one, an answer often given, and steps', () => {
    for (const stop of stopList) {
      const text = stopText(stop, 'v=1&farm=coastal-plain&seed=7', words, teach);
      expect(text.title).not.toBe('');
      expect([stop.id, text.ask.trim().slice(-1)]).toEqual([stop.id, '?']);
      expect(text.usual).not.toBe('');
      expect(text.steps.length).toBeGreaterThan(1);
      expect([stop.id, text.opens === null]).toEqual([stop.id, stop.aim.kind === 'talk' || stop.aim.kind === 'hands']);
    }
  });
  test('a lesson in a plan is called and asks as the lesson itself', () => {
    for (const [name, { title, ask }] of Object.entries(teach.said.stops.lesson)) {
      const head = readFileSync(join(projectFolder, `content/${language}/lessons/${name}.mdx`), 'utf8');
      expect(/^title: "?(.*?)"?$/m.exec(head)?.[1]).toBe(title);
      expect(/^question: "?(.*?)"?$/m.exec(head)?.[1]).toBe(ask);
    }
  });
});

test('both languages have the same lines with the same figures; Spanish addresses nobody and opens what it closes', () => {
  expect([...spanish.keys()]).toEqual([...english.keys()]);
  for (const [key, line] of english) expect([key, placeholders(spanish.get(key)!)]).toEqual([key, placeholders(line)]);
  const address = /(^|[^\p{L}])(tu|tus|tú|ti|te|usted|ustedes|elige|decide|mira|escribe|usa)(?![\p{L}])/iu;
  const open = [...spanish].filter(
    ([, line]) =>
      address.test(line.replace(/Cada quien \p{L}+/u, '')) ||
      line.includes('?') !== line.includes('¿') ||
      /[!¡]/.test(line),
  );
  expect(open).toEqual([]);
});

test('no line is longer than a teacher can take in at a glance: forty words a sentence at most', () => {
  for (const line of [...english.values(), ...spanish.values()])
    for (const sentence of line.split(/[.?]/))
      expect((sentence.match(/[\p{L}\p{N}]+/gu) ?? []).length).toBeLessThan(41);
});
