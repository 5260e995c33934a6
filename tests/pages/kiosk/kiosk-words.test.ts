import { describe, expect, test } from 'vitest';
import { fill } from '../../../src/language/fill.ts';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { stationIds } from '../../../src/model/station.ts';
import { choiceNumber, seasonsOfChoice, stationNumber } from '../../../src/pages/kiosk/explore-choices.ts';
import { ginned, guidedOrder, stopFigures } from '../../../src/pages/kiosk/stop-figures.ts';
import { loadKioskWords } from '../../../src/pages/kiosk/use-kiosk-words.ts';
import { catalogueLines } from '../../language/catalogue-lines.ts';

const both = { en: await loadKioskWords('en'), es: await loadKioskWords('es') };
const seasons = farms.map((farm) => runSeason(farm, 1, null));
const words = (text: string): number => text.split(/\s+/).filter(Boolean).length;
/** Forms that speak to the reader as tú or usted. */
const address = /(^|[^\p{L}])(tu|tus|tú|ti|te|usted|ustedes|elige|decide|mira|escribe|usa|toca|toque)(?![\p{L}])/iu;
const placeholders = (line: string): string[] => [...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!).sort();

test('both languages have the same lines with the same figures; Spanish addresses nobody and opens what it closes', () => {
  const english = catalogueLines(both.en.said);
  const spanish = catalogueLines(both.es.said);
  expect([...spanish.keys()]).toEqual([...english.keys()]);
  for (const [key, line] of english) expect([key, placeholders(spanish.get(key)!)]).toEqual([key, placeholders(line)]);
  for (const [key, line] of spanish) {
    expect([key, address.test(line)]).toEqual([key, false]);
    expect([key, line.includes('?')]).toEqual([key, line.includes('¿')]);
  }
  for (const line of [...english.values(), ...spanish.values()]) expect(line).not.toMatch(/[!¡]/);
});

// Kiosk screens of 60 words, captions of 25: an assumption that rests on Serrell, Exhibit Labels, 2015, and a minute's stay.
describe.each(['en', 'es'] as const)('in %s', (language) => {
  const { words: all, said } = both[language];
  test('a guided stop has 25 words at most, with every figure of every farm filled in', () => {
    for (const season of seasons) {
      const figures = stopFigures(season, all);
      for (const key of [...guidedOrder, 'seed', 'lint', 'sewingHalf'] as const) {
        const text = `${said.stops[key].head} ${fill(said.stops[key].text, figures)}`;
        expect([key, placeholders(text)]).toEqual([key, []]);
        expect([season.scenario.id, key, words(text) <= 25]).toEqual([season.scenario.id, key, true]);
      }
    }
  });
  test('a minute of reading has 45 words at most, and no figure that a season could change', () => {
    for (const station of stationIds) {
      const { lesson } = said.stations[station];
      expect([station, words(lesson) <= 45, words(lesson) >= 25, /\d/.test(lesson)]).toEqual([
        station,
        true,
        true,
        false,
      ]);
    }
  });
  test('every station says its number', () => {
    for (const season of seasons)
      for (const station of stationIds) {
        const n = stationNumber(season, station, all);
        expect([station, n]).not.toEqual([station, null]);
        expect(fill(said.stations[station].say, { n: n! })).not.toMatch(/[{}]/);
      }
  });
});

test('the two choices of a station come to two numbers, but where a crop or a cloth cannot be had', () => {
  const { words: all } = both.en;
  const alike = seasons.slice(0, 1).flatMap((season) =>
    stationIds.flatMap((station) => {
      const [one, other] = seasonsOfChoice(season, station).map((each) => choiceNumber(each, station, all));
      expect([station, one]).not.toEqual([station, null]);
      return one === other ? [`${station}: ${one}`] : [];
    }),
  );
  expect(alike).toEqual([]);
});

// 7 CFR and trade: a 480 lb bale leaves some 640 to 800 lb of seed (National Cottonseed Products Association, common practice).
test('the figures of the stops are the season’s: seed beside a bale, one boll’s patch', () => {
  for (const season of seasons) {
    const { lintKg, seedKg, bales } = ginned(season);
    expect(seedKg).toBeGreaterThan(lintKg);
    const pounds = seedKg / bales / 0.45359237;
    expect(pounds).toBeGreaterThan(550);
    expect(pounds).toBeLessThan(1000);
    const side = Number.parseFloat(stopFigures(season, both.en.words).size!);
    expect(side).toBeCloseTo(season.sewing!.patchInchesPerBoll!, 1);
  }
});
