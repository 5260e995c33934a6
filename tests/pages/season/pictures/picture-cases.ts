import { en } from '../../../../src/language/messages/en.ts';
import { es } from '../../../../src/language/messages/es.ts';
import { makeWords, type Words } from '../../../../src/language/words.ts';
import { runSeason } from '../../../../src/model/chain.ts';
import { farms } from '../../../../src/model/farms.ts';
import type { Scenario } from '../../../../src/model/scenario.ts';
import type { Season } from '../../../../src/model/season.ts';
import type { StationId } from '../../../../src/model/station.ts';
import type { PictureSize } from '../../../../src/pages/season/pictures/picture.ts';
import { inTurn } from '../../../laws/runs.ts';

/** The sizes a picture is shown at: desk, projector, phone, tall screen. */
export const pictureSizes: readonly PictureSize[] = [
  { width: 808, height: 388 },
  { width: 550, height: 341 },
  { width: 366, height: 384 },
  { width: 1016, height: 960 },
];

export const everyWords: readonly Words[] = [
  makeWords('en', 'us', en),
  makeWords('es', 'us', es),
  makeWords('en', 'metric', en),
  makeWords('es', 'metric', es),
];

/** All of them in the long run; otherwise both languages, the units changed about with the turn. */
export const wordsInTurn = (turn: number): readonly Words[] =>
  inTurn([everyWords[0]!, everyWords[1]!, everyWords[3]!, everyWords[2]!], turn);

const seasons = new Map<string, Season>();
/** The season of a farm, run once. */
export function seasonOf(scenario: Scenario): Season {
  const key = JSON.stringify(scenario);
  const known = seasons.get(key) ?? runSeason(scenario, 1, null);
  seasons.set(key, known);
  return known;
}

/** A farm with some decisions of a station made otherwise. */
export function decided<Station extends StationId>(
  farmId: string,
  station: Station,
  choices: Partial<Scenario['decisions'][Station]>,
): Scenario {
  const farm = farms.find(({ id }) => id === farmId)!;
  return {
    ...farm,
    decisions: { ...farm.decisions, [station]: { ...farm.decisions[station], ...choices } },
  };
}
