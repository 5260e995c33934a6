import { fill } from '../../language/fill.ts';
import type { Words } from '../../language/words.ts';
import { farmOf } from '../../model/farms.ts';
import type { Season } from '../../model/season.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import type { SeasonCard } from '../../scene/card/season-card.ts';
import { clothInks } from '../../scene/stations/sewing/cloth-inks.ts';
import { farmWords } from '../farm/farm-words.ts';
import type { Reading } from '../season/reading.ts';
import { stopText } from '../season/refusal-text.ts';
import { stationReadings } from '../season/station-readings.ts';
import { cardLedger } from './card-ledger.ts';
import { cardWords } from './card-words.ts';

/** The figures of a card, by the station that reports them: the farm's numbers, then the mill's. */
const shown: readonly (readonly [StationId, string])[] = [
  ['pressing', 'balesPressed'],
  ['boll', 'yield'],
  ['ginning', 'turnout'],
  ['classing', 'staple'],
  ['classing', 'colorGrade'],
  ['classing', 'leafGrade'],
  ['classing', 'value'],
  ['classing', 'left'],
  ['weaving', 'weight'],
  ['sewing', 'yards'],
];

/** One figure of the card, and the station whose working it opens. */
export interface CardFigure extends Reading {
  readonly station: StationId;
}

/** The figures as far as the season came. */
export function cardFigures(season: Season, words: Words): CardFigure[] {
  const { labels } = cardWords(words.language);
  return shown.flatMap(([station, key]) => {
    const reading = stationReadings(season, station, words).find((each) => each.key === key);
    return reading ? [{ ...reading, station, label: labels[key] ?? reading.label }] : [];
  });
}

/** What one boll made, or where the season stopped, in a sentence. */
function cardHeadline(season: Season, all: Words): string {
  const words = cardWords(all.language);
  const inches = season.sewing?.patchInchesPerBoll;
  if (inches) return fill(words.headline, { size: all.formats.length(inches, 2).text });
  return stopText(season, all) || words.noPatch;
}

/** What is said of the prices. */
function pricesText({ payments }: Season, { messages }: Words): string[] {
  if (!payments) return [];
  const { mixedYears, oneYearPrices } = messages.limits;
  return [payments.mixedYears ? mixedYears : fill(oneYearPrices, { year: String(payments.years[0] ?? '') })];
}

/** Where the farm lies, how large it is, which season it was and under whose weather. */
function settingText({ scenario, seed, weather }: Season, weatherName: string | null, all: Words): string {
  const { messages, formats } = all;
  const words = cardWords(all.language);
  const { used, generated } = messages.problems.weather;
  const named = weatherName === null ? null : fill(used, { name: weatherName });
  const record =
    named !== null && weather.year !== null
      ? fill(words.weatherYear, { weather: named, year: String(weather.year) })
      : named;
  return fill(words.setting, {
    climate: messages.climates[scenario.climate],
    acres: formats.area(scenario.acres).text,
    seed: String(seed),
    weather: record ?? fill(generated, { place: messages.climates[scenario.climate] }),
  });
}

/** An address that only the device itself can reach: this page was opened from it, not from a site. */
const opensHereOnly = (link: string): boolean => /^(file:|https?:\/\/(localhost|127\.|\[::1\]))/.test(link);

/**
 * A season's card in the reader's words and units.
 * @param weatherName name of the weather record under the season, or null for a made-up year
 * @param link the address that opens the season again
 */
export function cardContent(season: Season, weatherName: string | null, link: string, all: Words): SeasonCard {
  const { messages, language, unitSystem } = all;
  const words = cardWords(language);
  const { scenario, sewing, weaving, stopped } = season;
  const figures = cardFigures(season, all);
  const inches = sewing?.patchInchesPerBoll;
  const rests = figures.some(({ trust }) => trust);
  const sewn = stopped ? stationIds.indexOf(stopped.station) : stationIds.length;
  return {
    kind: farmOf(scenario.id) ? words.invented : words.own,
    name: scenario.name[language] || farmWords(language).unnamed,
    setting: settingText(season, weatherName, all),
    headline: cardHeadline(season, all),
    patch:
      inches && weaving?.cloth
        ? { inches, cloth: clothInks(weaving.cloth.finish), seamInches: scenario.decisions.sewing.seamInches }
        : null,
    size: {
      trueSize: words.trueSize,
      halfSize: words.halfSize,
      markInches: unitSystem === 'us' ? 1 : 10 / MM_PER_INCH,
    },
    figures: figures.map(({ label, text, trust }) => ({ label, text: trust ? `${text} ×` : text })),
    stateOf: (station) => (stationIds.indexOf(station) < sewn ? 'sewn' : 'chalked'),
    stations: Object.fromEntries(stationIds.map((id) => [id, messages.stations[id].name])) as Record<StationId, string>,
    closing: [...cardLedger(season, all), [...pricesText(season, all), ...(rests ? [words.rest] : [])].join(' ')],
    linkWords: opensHereOnly(link) ? words.linkHere : words.link,
    link,
  };
}
