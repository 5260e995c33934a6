import type { Language } from '../../../../src/language/language.ts';
import { en, type Messages } from '../../../../src/language/messages/en.ts';
import { es } from '../../../../src/language/messages/es.ts';
import { makeWords, type Words } from '../../../../src/language/words.ts';
import { runSeason } from '../../../../src/model/chain.ts';
import { farms } from '../../../../src/model/farms.ts';
import type { Season } from '../../../../src/model/season.ts';
import type { StationId } from '../../../../src/model/station.ts';
import { dayAt, stationSpan } from '../../../../src/model/timeline.ts';
import type { PictureMoment } from '../../../../src/pages/season/pictures/picture.ts';

/** The six farms in one season each, run once. */
export const seasons: readonly { readonly farm: string; readonly season: Season }[] = farms.map((farm) => ({
  farm: farm.id,
  season: runSeason(farm, 1, null),
}));

/** A desk, a projector, a phone and a kiosk, px. */
export const sizes = [
  { width: 808, height: 388 },
  { width: 550, height: 341 },
  { width: 366, height: 384 },
  { width: 1016, height: 960 },
] as const;

const messagesOf: Readonly<Record<Language, Messages>> = { en, es };
export const wordsOf = (language: Language, unitSystem: Words['unitSystem'] = 'us'): Words =>
  makeWords(language, unitSystem, messagesOf[language]);

/** The moment at a share of a station's steps. */
export function momentAt(season: Season, station: StationId, share: number): PictureMoment {
  const span = stationSpan(season, station);
  const step = Math.round(span.steps * share);
  return { dayOfYear: dayAt(span, step), progress: step / span.steps };
}
