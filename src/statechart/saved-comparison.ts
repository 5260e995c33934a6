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

/** The two runs' own queries in a comparison's, and pieces that are none. A missing second run is the first as its farm came. */
export function runQueries(query: string): { before: string; after: string; ignored: readonly string[] } {
  const [before = '', after, ...rest] = query.split(between);
  const asItCame = new URLSearchParams(before);
  asItCame.delete('set');
  return {
    before,
    after: after || asItCame.toString(),
    ignored: rest.map((piece) => piece.slice(0, 40)).filter(Boolean),
  };
}

/** Reads the query of a link. Junk is left out and named. */
export function decodeComparison(query: string): SavedComparison & { readonly ignored: readonly string[] } {
  const queries = runQueries(query);
  const [before, after] = [decodeRun(queries.before), decodeRun(queries.after)];
  return {
    before: before.run,
    after: after.run,
    ignored: [...new Set([...before.ignored, ...after.ignored, ...queries.ignored])],
  };
}
