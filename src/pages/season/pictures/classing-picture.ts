import { flowPicture } from './flow-picture.ts';
import type { StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** What comes in, and where it goes. */
export const classingPicture: StationPicture = {
  layOut(season, words, size) {
    const frame = flowPicture(season, 'classing', words, size);
    return () => frame;
  },
  see: (season, words, { dayOfYear }) => seeText(season, 'classing', dayOfYear, words),
  rows: () => [],
};
