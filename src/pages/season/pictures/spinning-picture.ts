import { flowPicture } from './flow-picture.ts';
import type { StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** What comes in, and where it goes. */
export const spinningPicture: StationPicture = {
  layOut(season, words, size) {
    const frame = flowPicture(season, 'spinning', words, size);
    return () => frame;
  },
  see: (season, words, { dayOfYear }) => seeText(season, 'spinning', dayOfYear, words),
  rows: () => [],
};
