import { fieldPicture } from './field-picture.ts';
import type { StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** One plant in its field, by the day. */
export const plantingPicture: StationPicture = {
  layOut:
    (season, words, size) =>
    ({ dayOfYear }) =>
      fieldPicture(season, dayOfYear, words, size),
  see: (season, words, { dayOfYear }) => seeText(season, 'planting', dayOfYear, words),
  rows: () => [],
};
