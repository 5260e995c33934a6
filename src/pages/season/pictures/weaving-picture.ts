import { flowPicture } from './flow-picture.ts';
import type { StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** What comes in, and where it goes. */
export const weavingPicture: StationPicture = {
  layOut(season, words, size) {
    const frame = flowPicture(season, 'weaving', words, size);
    return () => frame;
  },
  see: (season, words, { dayOfYear }) => seeText(season, 'weaving', dayOfYear, words),
  rows: () => [],
};
