/** Whether the kiosk shows its attract loop and nobody is at it; undefined where the page is no kiosk. */
let attract: boolean | undefined;
const listeners = new Set<() => void>();

/** In attract nobody loses anything by a reload: true then, false during a visit, undefined where the page is no kiosk. */
export const attractNow = (): boolean | undefined => attract;

/** Said by the kiosk page as it changes; undefined as it closes. */
export function sayAttract(next: boolean | undefined): void {
  if (next === attract) return;
  attract = next;
  for (const listener of listeners) listener();
}

/** Calls back after every change; returns the way to stop listening. */
export function onAttract(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
