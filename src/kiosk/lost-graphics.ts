/** The picture itself survives this many losses. */
const SURVIVED = 1;
/** A context that is not back after this time does not come back: a little more than the picture itself waits. */
const BACK_MS = 4000;

/**
 * Calls back when drawing contexts of the page were taken away once more than a picture mends by itself, or when one does not come
 * back: Chromium gives a page its context back once, and after that only to one that is loaded anew.
 * @returns stops it
 */
export function onGraphicsLost(callback: () => void): () => void {
  let losses = 0;
  let timer = 0;
  const lost = () => {
    losses++;
    clearTimeout(timer);
    if (losses > SURVIVED) callback();
    else timer = window.setTimeout(callback, BACK_MS);
  };
  const back = () => clearTimeout(timer);
  // The events do not bubble, but pass the document on their way down.
  document.addEventListener('webglcontextlost', lost, true);
  document.addEventListener('webglcontextrestored', back, true);
  return () => {
    clearTimeout(timer);
    document.removeEventListener('webglcontextlost', lost, true);
    document.removeEventListener('webglcontextrestored', back, true);
  };
}
