import { describe, expect, test } from 'vitest';
import { en } from '../../../src/language/messages/en.ts';
import { es } from '../../../src/language/messages/es.ts';
import { makeWords } from '../../../src/language/words.ts';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { stationIds } from '../../../src/model/station.ts';
import { choiceWords } from '../../../src/pages/season/choice-words.ts';
import { answerText, whyText } from '../../../src/pages/season/predict-text.ts';
import { predictWords } from '../../../src/pages/season/predict-words.ts';
import { workOut } from '../../../src/workings/work-out.ts';
import { catalogueLines } from '../../language/catalogue-lines.ts';

const placeholders = (line: string): string[] => [...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!).sort();
const spoken = (line: string) => line.match(/[\p{L}\p{N}]+/gu) ?? [];
const season = runSeason(farms[0]!, 1, null);

describe.each([
  ['the questions', predictWords],
  ['the last choice', choiceWords],
] as const)('the words of %s', (_, wordsIn) => {
  const english = catalogueLines(wordsIn('en'));
  const spanish = catalogueLines(wordsIn('es'));
  test('are there in both languages with the same figures', () => {
    expect([...spanish.keys()]).toEqual([...english.keys()]);
    for (const [key, line] of english)
      expect([key, placeholders(spanish.get(key)!)]).toEqual([key, placeholders(line)]);
  });
  test('address nobody as tú or usted in Spanish, and open what they close', () => {
    const address = /(^|[^\p{L}])(tu|tus|tú|ti|te|usted|elige|adivina|mira|escribe)(?![\p{L}])/iu;
    for (const line of spanish.values()) {
      expect(line).not.toMatch(address);
      expect(line.includes('?')).toBe(line.includes('¿'));
    }
  });
});

describe.each([
  ['en', makeWords('en', 'us', en)],
  ['es', makeWords('es', 'metric', es)],
] as const)('in %s', (language, words) => {
  test.each(stationIds)(
    'at %s: at most twelve words, every sentence of the why in a whole season, figures with workings',
    (station) => {
      const { question, why } = predictWords(language).asked[station];
      expect(spoken(question).length).toBeLessThanOrEqual(12);
      expect(question.endsWith('?')).toBe(true);
      const told = whyText(season, station, words);
      expect(told).toHaveLength(why.length);
      const answer = answerText(season, station, words)!;
      expect(answer.text).toMatch(/\d/);
      const keys = [answer, ...told.flat().filter((piece) => typeof piece !== 'string')].map(
        ({ source }) => source.key,
      );
      expect(new Set(keys).size).toBe(keys.length);
      for (const name of why.flatMap(placeholders)) {
        expect(workOut(season, { topic: 'reading', station, key: name })).not.toBeNull();
      }
    },
  );
});
