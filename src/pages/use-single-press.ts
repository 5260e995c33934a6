import { useRef } from 'preact/hooks';

/** A press within this time of one that moved belongs to it: a double click must not sew two blocks in. */
const TOGETHER_MS = 500;

/**
 * The action, deaf to the second press of a double click. A press that led nowhere does not count.
 * @param place where the action leads from, read at the press
 */
export function useSinglePress(action: () => void, place: () => string): () => void {
  const last = useRef({ atMs: Number.NEGATIVE_INFINITY, from: '' });
  return () => {
    const now = performance.now();
    const moved = last.current.from !== place();
    if (moved && now - last.current.atMs < TOGETHER_MS) return;
    last.current = { atMs: now, from: place() };
    action();
  };
}
