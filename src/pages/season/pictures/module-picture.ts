import { flowPicture } from './flow-picture.ts';
import type { StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** What comes in, and where it goes. */
export const modulePicture: StationPicture = {
  layOut(season, words, size) {
    const frame = flowPicture(season, 'module', words, size);
    return () => frame;
  },
  see: (season, words, { dayOfYear }) => seeText(season, 'module', dayOfYear, words),
  rows: () => [],
};
