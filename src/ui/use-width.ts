import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/**
 * The width an element has on screen, px, so that a drawing can be made at true size and its words keep theirs.
 * @param first the width to draw at before the element is measured
 */
export function useWidth<Measured extends Element>(first: number): [RefObject<Measured | null>, number] {
  const element = useRef<Measured | null>(null);
  const [width, setWidth] = useState(first);
  useEffect(() => {
    const measured = element.current;
    if (!measured || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(([entry]) => {
      const next = Math.round(entry?.contentRect.width ?? 0);
      if (next > 0) setWidth(next);
    });
    observer.observe(measured);
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
