import type { Season } from '../../../../src/model/season.ts';
import type { StationId } from '../../../../src/model/station.ts';
import { dayAt, stationSpan } from '../../../../src/model/timeline.ts';
import type { PictureMoment } from '../../../../src/pages/season/pictures/picture.ts';
import { farmSeasons } from './scene-checks.ts';

/** The six farms in one season each, and which case each is, from 0. */
export const seasons: readonly { readonly farm: string; readonly season: Season; readonly turn: number }[] =
  farmSeasons.map((season, turn) => ({ farm: season.scenario.id, season, turn }));

/** A desk, a projector, a phone and a kiosk, px. */
export const sizes = [
  { width: 808, height: 388 },
  { width: 550, height: 341 },
  { width: 366, height: 384 },
  { width: 1016, height: 960 },
] as const;

/** The moment at a share of a station's steps. */
export function momentAt(season: Season, station: StationId, share: number): PictureMoment {
  const span = stationSpan(season, station);
  const step = Math.round(span.steps * share);
  return { dayOfYear: dayAt(span, step), progress: step / span.steps };
}
