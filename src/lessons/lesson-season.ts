import { runSeason } from '../model/chain.ts';
import { farms } from '../model/farms.ts';
import type { Season } from '../model/season.ts';

/** The season that lessons speak of: the first farm, as its page opens. */
export const lessonSeed = 1;
export const lessonFarm = farms[0]!;

let season: Season | null = null;

/** That season, run once. */
export function lessonSeason(): Season {
  season ??= runSeason(lessonFarm, lessonSeed, null);
  return season;
}
