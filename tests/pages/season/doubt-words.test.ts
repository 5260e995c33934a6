import { describe, expect, test } from 'vitest';
import { plainSeason } from '../../../src/doubt/one-at-a-time.ts';
import { sortUnsureFacts } from '../../../src/doubt/uncertain-facts.ts';
import { farms } from '../../../src/model/farms.ts';
import { doubtWords, factName } from '../../../src/pages/season/doubt-words.ts';

const english = doubtWords('en');
const { moved, held } = sortUnsureFacts();
const firstNames = [...moved, ...held].map(({ names }) => names[0]!);

test.each(Object.keys(english.facts))('the plain name under %s is used by a fact that the panel can tell of', (key) => {
  const plain = (english.facts as Record<string, string>)[key]!;
  expect(firstNames.filter((name) => factName(name, english).text === plain)).not.toEqual([]);
});

describe.each(['en', 'es'] as const)('in %s', (language) => {
  const words = doubtWords(language);
  test('every fact that stays still because the model took it in as it loaded has a plain name', () => {
    const early = held.filter(({ reason }) => reason === 'readAtLoad').map(({ names }) => factName(names[0]!, words));
    expect(early.length).toBeGreaterThan(0);
    expect(early.filter(({ own }) => own)).toEqual([]);
  });
  test.each(farms.map((scenario) => [scenario.id, scenario] as const))(
    'no two facts that a season of %s reads share a plain name',
    (_, scenario) => {
      const { read } = plainSeason({ scenario, seed: 1, record: null });
      const plain = read.map(({ names }) => factName(names[0]!, words)).filter(({ own }) => !own);
      expect(plain.length).toBeGreaterThan(20);
      expect(new Set(plain.map(({ text }) => text)).size).toBe(plain.length);
    },
  );
});

test('a fact without a plain name goes by its own, in words, and says so', () => {
  expect(factName('field/facts.stageFacts.standLossPerLateWeek', english)).toEqual({
    text: 'stand loss per late week (stage facts)',
    own: true,
  });
});
