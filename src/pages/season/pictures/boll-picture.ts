import { fieldPicture } from './field-picture.ts';
import type { StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** One plant in its field, by the day. */
export const bollPicture: StationPicture = {
  layOut:
    (season, words, size) =>
    ({ dayOfYear }) =>
      fieldPicture(season, dayOfYear, words, size),
  see: (season, words, { dayOfYear }) => seeText(season, 'boll', dayOfYear, words),
  rows: () => [],
};
