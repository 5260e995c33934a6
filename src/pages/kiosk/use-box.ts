import { useEffect, useRef, useState } from 'preact/hooks';

/** A size, px. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The room an element has, whole px; null until it is measured. */
export function useBox<Host extends HTMLElement>() {
  const host = useRef<Host>(null);
  const [box, setBox] = useState<Size | null>(null);
  useEffect(() => {
    const element = host.current;
    if (!element) return;
    const measure = () => {
      const [width, height] = [Math.round(element.clientWidth), Math.round(element.clientHeight)];
      if (width > 0 && height > 0)
        setBox((last) => (last?.width === width && last.height === height ? last : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { host, box };
}
