import { decodeRun, encodeRun, type SavedRun } from './saved-run.ts';

/** Two seasons to set side by side. */
export interface SavedComparison {
  readonly before: SavedRun;
  readonly after: SavedRun;
}

/** Parts the two runs in a link; neither run's own link can hold it. */
const between = '/';

/** The query of a link that reopens both seasons: the links of the two runs, one after the other. */
export const encodeComparison = ({ before, after }: SavedComparison): string =>
  `${encodeRun(before)}${between}${encodeRun(after)}`;

/**
 * Reads the query of a link. A missing second run is the farm's own season with the first one's number; junk is left out
 * and named.
 */
export function decodeComparison(query: string): SavedComparison & { readonly ignored: readonly string[] } {
  const [first = '', second, ...rest] = query.split(between);
  const before = decodeRun(first);
  const { scenario, seed } = before.run;
  const after = decodeRun(second || `farm=${scenario.id}&seed=${seed}`);
  return {
    before: before.run,
    after: after.run,
    ignored: [...before.ignored, ...after.ignored, ...rest.map((piece) => piece.slice(0, 40)).filter(Boolean)],
  };
}
