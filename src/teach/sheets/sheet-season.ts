import { runSeason } from '../../model/chain.ts';
import { farms } from '../../model/farms.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { Season } from '../../model/season.ts';
import { encodeRun, type SavedRun } from '../../statechart/saved-run.ts';
import { seasonOfPupil, seedCount } from '../class/class-seasons.ts';

/** Whether questions can be drawn from a farm's seasons: upland cotton of the present, which one staple chart reads. */
export const givesQuestions = ({ era, decisions }: Scenario): boolean =>
  era === 'present' && !decisions.planting.variety.startsWith('pima');
const sheetFarms = farms.filter(givesQuestions);
/** From one try to the next, so that a crop that failed is not followed by the next pupil's. */
const nextSeed = 10_007;
const mostTries = 20;

/** Seasons run, newest last: a sheet asks for its pupil's several times. */
const kept = new Map<string, Season>();
const mostKept = 40;

/** The first season from a seed on whose cotton came to a classed bale; null where twenty crops in a row failed. */
function classedSeason(farm: Scenario, seed: number): Season | null {
  for (let tries = 0; tries < mostTries; tries++) {
    const season = runSeason(farm, (seed + tries * nextSeed) % seedCount, null);
    if (season.payments && season.classing?.classed.length) return season;
  }
  return null;
}

function findSeason(pupil: number, run: SavedRun | null): Season {
  const own = run && givesQuestions(run.scenario) ? seasonOfPupil(run, pupil) : null;
  const farm = sheetFarms[pupil % sheetFarms.length]!;
  const season = (own && classedSeason(own.scenario, own.seed)) ?? classedSeason(farm, pupil);
  if (!season) throw new Error(`no season of ${farm.id} near seed ${pupil} came to a classed bale`);
  return season;
}

/**
 * The season that a pupil's numbers come from: that of the pupil's number in the class link, or, where there is no link or its
 * farm gives no questions, a farm in turn with the sheet's number as its seed; a later one where that crop failed.
 * @throws Error when twenty crops in a row failed
 */
export function sheetSeason(pupil: number, run: SavedRun | null): Season {
  const key = `${pupil} ${run ? encodeRun(run) : ''}`;
  const known = kept.get(key);
  if (known) return known;
  const season = findSeason(pupil, run);
  if (kept.size >= mostKept) kept.delete(kept.keys().next().value!);
  kept.set(key, season);
  return season;
}
