import { en } from '../../src/language/messages/en.ts';
import { makeWords } from '../../src/language/words.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import type { Season } from '../../src/model/season.ts';
import type { StationId } from '../../src/model/station.ts';
import { cleaningPicture } from '../../src/pages/season/pictures/cleaning-picture.ts';
import { ginningPicture } from '../../src/pages/season/pictures/ginning-picture.ts';
import { harvestPicture } from '../../src/pages/season/pictures/harvest-picture.ts';
import type { PictureSize, StationPicture } from '../../src/pages/season/pictures/picture.ts';
import { pressingPicture } from '../../src/pages/season/pictures/pressing-picture.ts';
import { spinningPicture } from '../../src/pages/season/pictures/spinning-picture.ts';
import type { SceneFrame } from '../../src/scene/scene-frame.ts';

const pictures: Partial<Record<StationId, StationPicture>> = {
  harvest: harvestPicture,
  cleaning: cleaningPicture,
  ginning: ginningPicture,
  pressing: pressingPicture,
  spinning: spinningPicture,
};
/** Stations whose pictures show mass on its way. */
export const chainStations = Object.keys(pictures) as StationId[];

let season: Season | undefined;
/** A station's picture of the first farm, in English, its work half done. */
export function sampleFrame(station: StationId, size: PictureSize): SceneFrame | null {
  season ??= runSeason(farms[0]!, 1, null);
  return pictures[station]?.layOut(season, makeWords('en', 'us', en), size)({ dayOfYear: 280, progress: 0.5 }) ?? null;
}
