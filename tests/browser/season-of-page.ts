import type { Page } from 'playwright-core';
import { en } from '../../src/language/messages/en.ts';
import { es } from '../../src/language/messages/es.ts';
import { makeWords, type Words } from '../../src/language/words.ts';
import { runSeason } from '../../src/model/chain.ts';
import type { Season } from '../../src/model/season.ts';
import type { StationId } from '../../src/model/station.ts';
import { dayAt, stationSpan, stepOn } from '../../src/model/timeline.ts';
import type { PictureMoment } from '../../src/pages/season/pictures/picture.ts';
import { stationPictures } from '../../src/pages/season/pictures/station-pictures.ts';
import { decodeRun } from '../../src/statechart/saved-run.ts';

/** What a page shows, worked out again here from its address, its ribbon and its choice of language and units alone. */
export interface ShownSeason {
  readonly season: Season;
  readonly station: StationId;
  readonly words: Words;
  readonly moment: PictureMoment;
}

/** @returns null while the page is between two stations */
export async function shownSeason(page: Page): Promise<ShownSeason | null> {
  const read = await page.evaluate(() => {
    const main = document.querySelector('main.season');
    const slider = document.querySelector<HTMLInputElement>('.ribbon-track input');
    const kept = JSON.parse(localStorage.getItem('seamfield.preferences.1') ?? '{}') as Record<string, string>;
    return {
      hash: location.hash,
      station: main?.getAttribute('data-station') ?? '',
      value: Number(slider?.value ?? 0),
      least: Number(slider?.min ?? 0),
      language: document.documentElement.lang,
      units: kept.units ?? 'us',
    };
  });
  const [path = '', query = ''] = read.hash.split('?');
  if (!path.endsWith(`/${read.station}`)) return null;
  const station = read.station as StationId;
  const { run } = decodeRun(query);
  const season = runSeason(run.scenario, run.seed, null);
  const span = stationSpan(season, station);
  const inField = station === 'planting' || station === 'bloom' || station === 'boll';
  const step = inField ? stepOn(span, read.value) : read.value;
  const spanish = read.language.startsWith('es');
  return {
    season,
    station,
    words: makeWords(spanish ? 'es' : 'en', read.units === 'metric' ? 'metric' : 'us', spanish ? es : en),
    moment: { dayOfYear: dayAt(span, step), progress: step / span.steps },
  };
}

/** The words and the table that stand for the picture, as the model gives them. */
export function twinOf({ season, station, words, moment }: ShownSeason) {
  const picture = stationPictures[station];
  const rows = picture.rows(season, words, moment).map(({ key, label, text }) => ({ key, label, text }));
  return { see: picture.see(season, words, moment), rows };
}

/** The same as the page shows them. */
export const readTwin = (page: Page) =>
  page.evaluate(() => ({
    see: [...document.querySelectorAll('.seen-lines > p')].map((line) => line.textContent ?? ''),
    rows: [...document.querySelectorAll('.twin-see .seen-table tr[data-key]')].map((row) => ({
      key: row.getAttribute('data-key') ?? '',
      label: row.querySelector('th')?.textContent ?? '',
      text: row.querySelector('td')?.textContent ?? '',
    })),
  }));
