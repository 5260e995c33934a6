/** The season that is open: as it was last shown. */
export interface OpenSeason {
  /** The link of its run, without the station. */
  readonly run: string;
  /** The whole address, with the station. */
  readonly hash: string;
  /** Blocks sewn, 0 to 12. */
  readonly sewn: number;
}

let last: OpenSeason | null = null;

/** Keeps the season that is open, so that other pages can begin with it and the menu leads back to it; gone with the page. */
export function rememberSeason(season: OpenSeason): void {
  last = season;
}

/** The season that was last open; null while none was. */
export const lastSeason = (): OpenSeason | null => last;

/** The link of its run. */
export const lastRun = (): string | null => last?.run ?? null;
