import { runSeason } from '../../model/chain.ts';
import { farms } from '../../model/farms.ts';
import type { Season } from '../../model/season.ts';

/** Farms whose seasons the questions are drawn from: upland cotton of the present, which one staple chart reads. */
const sheetFarms = farms.filter(
  ({ era, decisions }) => era === 'present' && !decisions.planting.variety.startsWith('pima'),
);
/** From one try to the next, so that a crop that failed is not followed by the next pupil's. */
const nextSeed = 10_007;
const mostTries = 20;

/** Seasons run, newest last: a sheet asks for its pupil's several times. */
const kept = new Map<number, Season>();
const mostKept = 40;

function findSeason(pupil: number): Season {
  const farm = sheetFarms[pupil % sheetFarms.length]!;
  for (let tries = 0; tries < mostTries; tries++) {
    const season = runSeason(farm, pupil + tries * nextSeed, null);
    if (season.payments && season.classing?.classed.length) return season;
  }
  throw new Error(`no season of ${farm.id} near seed ${pupil} came to a classed bale`);
}

/**
 * The season that a pupil's numbers come from: a farm in turn, with the sheet's number as its seed; a later one where that
 * crop failed.
 * @throws Error when twenty crops in a row failed
 */
export function sheetSeason(pupil: number): Season {
  const known = kept.get(pupil);
  if (known) return known;
  const season = findSeason(pupil);
  if (kept.size >= mostKept) kept.delete(kept.keys().next().value!);
  kept.set(pupil, season);
  return season;
}
