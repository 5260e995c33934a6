let last: string | null = null;

/** Keeps the link of the season that is open, so that other pages can begin with it; gone with the page. */
export function rememberRun(query: string): void {
  last = query;
}

/** The link of the season that was last open; null while none was. */
export const lastRun = (): string | null => last;
