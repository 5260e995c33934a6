import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { languages } from '../../src/language/language.ts';
import { glossaryAreas, glossarySchema } from '../../src/lessons/glossary.ts';
import { byLetters } from '../../src/pages/lessons/glossary-page.tsx';
import { loadGlossary } from '../../src/pages/lessons/load-glossary.ts';
import { fillerIn, longSentences, sentencesOf, unsupportedClaims } from './prose-rules.ts';

const files = import.meta.glob<Record<string, unknown>>('../../content/*/glossary/*.json', {
  eager: true,
  import: 'default',
});
const [english, spanish] = await Promise.all(languages.map(loadGlossary));

describe('the glossary', () => {
  test('has the same files, each in order, in both languages', () => {
    for (const language of languages)
      for (const area of glossaryAreas) {
        const file = files[`../../content/${language}/glossary/${area}.json`];
        expect(v.safeParse(glossarySchema, file).issues).toBeUndefined();
      }
  });
  test('has the same terms in both languages, none in two files', () => {
    expect(Object.keys(spanish!).sort()).toEqual(Object.keys(english!).sort());
    const ids = Object.entries(files).flatMap(([path, file]) => (path.includes('/en/') ? Object.keys(file) : []));
    expect(new Set(ids).size).toBe(ids.length);
  });
  test('says each in one or two plain sentences', () => {
    for (const glossary of [english!, spanish!])
      for (const [id, { says }] of Object.entries(glossary)) {
        expect([id, sentencesOf(says).length]).toEqual([id, expect.toSatisfy((count: number) => count <= 2)]);
        expect([...fillerIn(says), ...unsupportedClaims(says), ...longSentences(says)]).toEqual([]);
      }
  });
  test('names each term once in a language', () => {
    for (const glossary of [english!, spanish!]) {
      const terms = Object.values(glossary).map(({ term }) => term.toLowerCase());
      expect(terms.filter((term, index) => terms.indexOf(term) !== index)).toEqual([]);
    }
  });
  test('is sorted by the letters of its language', () => {
    const entry = (term: string) => ({ term, says: 'x' });
    const sorted = byLetters({ a: entry('ñandú'), b: entry('nudo'), c: entry('óvulo'), d: entry('ojo') }, 'es');
    expect(sorted.map(([letter, terms]) => [letter, terms.map(([, { term }]) => term)])).toEqual([
      ['N', ['nudo']],
      ['Ñ', ['ñandú']],
      ['O', ['ojo', 'óvulo']],
    ]);
  });
});
