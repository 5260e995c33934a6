/** The picture itself survives this many losses. */
const SURVIVED = 1;

/**
 * Calls back when drawing contexts of the page were taken away once more than a picture mends by itself: Chromium gives a page
 * its context back once, and after that only to one that is loaded anew.
 * @returns stops it
 */
export function onGraphicsLost(callback: () => void): () => void {
  let losses = 0;
  const count = () => {
    losses++;
    if (losses > SURVIVED) callback();
  };
  // The event does not bubble, but passes the document on its way down.
  document.addEventListener('webglcontextlost', count, true);
  return () => document.removeEventListener('webglcontextlost', count, true);
}
