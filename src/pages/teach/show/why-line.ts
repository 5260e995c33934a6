import type { Words } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { whyText } from '../../season/predict-text.ts';

/** Why a season gives what it gives, each sentence as plain text. */
export const whyLines = (season: Season, station: StationId, words: Words): readonly string[] =>
  whyText(season, station, words).map((pieces) =>
    pieces.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join(''),
  );

/** The first of them, for the wall; '' where a season has none. */
export const firstWhy = (season: Season, station: StationId, words: Words): string =>
  whyLines(season, station, words)[0] ?? '';
