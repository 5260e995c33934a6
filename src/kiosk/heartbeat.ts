/** How often the page says that it lives; a launcher that has read the same sign for a minute may start the browser anew. */
export const BEAT_MS = 10_000;

/** What the page is about when it beats. */
export type KioskState = 'attract' | 'visit' | 'setup' | 'resting';

/** The sign: the product, what it is about and the time of the beat, UTC, to the second. */
export const beatText = (state: KioskState, now: Date): string =>
  `Seamfield kiosk ${state} ${now.toISOString().slice(0, 19)}Z`;

/**
 * Writes the sign where a program outside the page can read it without a network: the title of the window, and the attribute
 * data-heartbeat of the document.
 * @returns stops it and gives the window its title back
 */
export function startHeartbeat(stateNow: () => KioskState): () => void {
  const titleBefore = document.title;
  const { dataset } = document.documentElement;
  const beat = () => {
    const text = beatText(stateNow(), new Date());
    document.title = text;
    dataset.heartbeat = text;
  };
  beat();
  const timer = setInterval(beat, BEAT_MS);
  return () => {
    clearInterval(timer);
    delete dataset.heartbeat;
    document.title = titleBefore;
  };
}
