import { describe, expect, test } from 'vitest';
import type { Language } from '../../../src/language/language.ts';
import { loadMessages } from '../../../src/language/load-messages.ts';
import { makeWords } from '../../../src/language/words.ts';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import type { Scenario } from '../../../src/model/scenario.ts';
import { cardContent } from '../../../src/pages/card/card-content.ts';
import { cardSize, seasonCard } from '../../../src/scene/card/season-card.ts';
import { type DisplayList, flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { paintCanvas } from '../../../src/scene/paint-canvas.ts';
import { paintSvg } from '../../../src/scene/paint-svg.ts';

const link = 'https://a-school-host.example/seamfield/#/season/sewing?v=1&farm=coastal-plain&seed=7';
const wordsOf = async (language: Language, units: 'us' | 'metric' = 'us') =>
  makeWords(language, units, await loadMessages(language));
const seasonOf = (scenario: Scenario) => runSeason(scenario, 7, null);

/** The words of a list, as the canvas painter writes them. */
function canvasWords(list: DisplayList): string[] {
  const written: string[] = [];
  const deaf: ProxyHandler<object> = {
    get: (_, key) => (key === 'fillText' ? (text: string) => written.push(text) : () => {}),
    set: () => true,
  };
  paintCanvas(new Proxy({}, deaf) as CanvasRenderingContext2D, list, 'day', true);
  return written;
}
/** The words of a list, as the SVG painter writes them. */
const svgWords = (list: DisplayList): string[] =>
  [...paintSvg(list, { ...cardSize, theme: 'day' }).matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) =>
    text!.replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"'),
  );

describe.each(farms.map((farm) => [farm.id, farm] as const))('the card of %s', (_, farm) => {
  const season = seasonOf(farm);

  test.each(['en', 'es'] as const)(
    'says the same on paper and in the picture, inside the page, in %s',
    async (language) => {
      const card = cardContent(season, null, link, await wordsOf(language));
      const marks = seasonCard(card);
      const written = svgWords(marks);
      expect(canvasWords(marks)).toEqual(written);
      for (const { text } of card.figures) expect(written).toContain(text);
      expect(written.join('')).toContain(link);
      expect(written.join(' ')).toContain(card.headline);
      const texts = [...flatMarks(marks)].filter((mark) => mark.kind === 'text');
      expect(texts.filter(({ x, y }) => x < 0 || y < 0 || x > cardSize.width || y > cardSize.height - 12)).toEqual([]);
      expect(texts.filter(({ size }) => size < 8)).toEqual([]);
    },
  );

  test('draws the patch at true size: 96 px an inch, as CSS has it', async () => {
    const marks = seasonCard(cardContent(season, null, link, await wordsOf('en')));
    const patch = [...groupsOf(marks)].find(({ name }) => name === 'patch')!;
    const cloth = [...flatMarks(patch.marks)].find((mark) => mark.kind === 'patch')!;
    const xs = cloth.points.map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(96 * season.sewing!.patchInchesPerBoll!, 6);
  });

  test('closes: what came in adds to what went out, as printed', async () => {
    const [into, out] = cardContent(season, null, link, await wordsOf('en')).closing;
    const numbers = (line: string) =>
      [...line.matchAll(/[\d,]+(?= [a-z])|^[\d,]+/g)].map(([n]) => Number(n.replaceAll(',', '')));
    const [allIn, ...parts] = numbers(into!.replace('\u00a0lb', ' lb'));
    const [allOut, ...ends] = numbers(out!.replace('\u00a0lb', ' lb').replace(/ Unaccounted.*/, ''));
    expect(parts.reduce((sum, n) => sum + n, 0)).toBe(allIn);
    expect(ends.reduce((sum, n) => sum + n, 0)).toBe(allOut);
    expect(allOut).toBe(allIn);
  });
});

describe('a card', () => {
  const own: Scenario = {
    ...farms[0]!,
    id: 'own-x',
    name: { en: '<img src=x onerror=alert(1)>', es: 'W'.repeat(240) },
  };

  test('writes a typed name as text, never as markup', async () => {
    const svg = paintSvg(seasonCard(cardContent(seasonOf(own), null, link, await wordsOf('en'))), {
      ...cardSize,
      theme: 'day',
    });
    expect(svg).not.toContain('<img');
    expect(svg).toContain('&lt;img src=x onerror=alert(1)&gt;');
  });

  test('cuts a name that is far too long, and says whose farm it is', async () => {
    const card = cardContent(seasonOf(own), 'station.csv', link, await wordsOf('es'));
    const written = svgWords(seasonCard(card));
    expect(written.some((text) => /^W{20,}…$/.test(text))).toBe(true);
    expect(card.kind).toBe('Tarjeta de temporada de la granja propia de alguien');
    expect(card.setting).toContain('station.csv');
  });

  test('of a crop that failed says why, shows no patch and sews no block in past the stop', async () => {
    const late: Scenario = {
      ...farms[2]!,
      decisions: { ...farms[2]!.decisions, planting: { ...farms[2]!.decisions.planting, plantingDayOfYear: 191 } },
    };
    const season = runSeason(late, 3, null);
    expect(season.stopped).not.toBeNull();
    const card = cardContent(season, null, link, await wordsOf('en'));
    expect(card.patch).toBeNull();
    expect(card.stateOf('sewing')).toBe('chalked');
    expect(svgWords(seasonCard(card)).join(' ')).toContain('The crop stopped here');
  });

  test('takes the long link of a farm changed everywhere', async () => {
    const long = `${link}&set=${'0a1b'.repeat(36)}&land=4-1-1234.5-123.25&own=own-abcdefgh&weather=1abcdef`;
    const written = svgWords(seasonCard(cardContent(seasonOf(farms[3]!), null, long, await wordsOf('en'))));
    expect(written.join('')).toContain(long);
  });
});
