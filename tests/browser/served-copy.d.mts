/** Where the built site lies. */
export const siteFolder: string;

/** A copy of the built site on a server of its own, which can be changed and taken away. */
export interface ServedCopy {
  /** Its address, with a closing slash. */
  readonly site: string;
  /** The copy becomes the next version: the start page has another title, and the worker knows of it. */
  nextVersion(title: string): void;
  /** Takes the server away: whatever still answers comes from the device. */
  takeAway(): Promise<void>;
  /** Ends the server and removes the copy. */
  remove(): Promise<void>;
}

/**
 * Serves a copy of the site below an address with folders, as a host that is shared would.
 * @param below path between the host and the site, with a closing slash; '' for none
 */
export function serveCopy(below?: string): Promise<ServedCopy>;
