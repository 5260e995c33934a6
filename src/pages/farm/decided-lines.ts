import type { Words } from '../../language/words.ts';
import { type Decision, decisionTable } from '../../model/decisions.ts';
import type { Scenario } from '../../model/scenario.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { decidedText, decisionName } from '../compare/decision-text.ts';

/** One decision of a farm, in words and units. */
export interface DecidedLine {
  readonly key: string;
  readonly label: string;
  readonly text: string;
}

const decisionsOf = (station: StationId) => Object.entries(decisionTable[station]) as [string, Decision][];

/** Every decision of a station as this farm has it, in the table's order. */
export function decidedLines(scenario: Scenario, station: StationId, words: Words): DecidedLine[] {
  const values = scenario.decisions[station] as Readonly<Record<string, number | string | boolean>>;
  return decisionsOf(station).map(([key, decision]) => {
    const place = { station, key, decision };
    return { key, label: decisionName(place, words), text: decidedText(place, values[key]!, words) };
  });
}

/** A decision's path in a farm file, with the words that the page has for it; any other path as it stands. */
export function decisionTitle(path: string, words: Words): string {
  for (const station of stationIds)
    for (const [key, decision] of decisionsOf(station))
      if (path === `decisions.${station}.${key}`) return `${decisionName({ station, key, decision }, words)} (${path})`;
  return path;
}
