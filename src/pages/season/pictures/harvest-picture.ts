import { flowPicture } from './flow-picture.ts';
import type { StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** What comes in, and where it goes. */
export const harvestPicture: StationPicture = {
  layOut(season, words, size) {
    const frame = flowPicture(season, 'harvest', words, size);
    return () => frame;
  },
  see: (season, words, { dayOfYear }) => seeText(season, 'harvest', dayOfYear, words),
  rows: () => [],
};
