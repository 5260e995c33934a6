import { decidedValue, decisionPlaces } from '../../compare/changed-decisions.ts';
import type { Words } from '../../language/words.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { StationId } from '../../model/station.ts';
import { decidedText, decisionName } from '../compare/decision-text.ts';

/** One decision of a farm, in words and units. */
export interface DecidedLine {
  readonly key: string;
  readonly label: string;
  readonly text: string;
}

/** Every decision of a station as this farm has it, in the table's order. */
export const decidedLines = ({ decisions }: Scenario, station: StationId, words: Words): DecidedLine[] =>
  decisionPlaces
    .filter((place) => place.station === station)
    .map((place) => ({
      key: place.key,
      label: decisionName(place, words),
      text: decidedText(place, decidedValue(decisions, place), words),
    }));

/** The decisions of a station that are unlike another farm's, with what that farm has. */
export function unlikeLines(scenario: Scenario, base: Scenario, station: StationId, words: Words) {
  const there = decidedLines(base, station, words);
  return decidedLines(scenario, station, words).flatMap((line, index) =>
    line.text === there[index]!.text ? [] : [{ ...line, there: there[index]!.text }],
  );
}

/** A decision's path in a farm file, with the words that the page has for it; any other path as it stands. */
export function decisionTitle(path: string, words: Words): string {
  const place = decisionPlaces.find(({ station, key }) => path === `decisions.${station}.${key}`);
  return place ? `${decisionName(place, words)} (${path})` : path;
}
