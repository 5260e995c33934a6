import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { DisplayList } from '../../scene/display-list.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { patchSvg } from '../../scene/patch-svg.ts';
import { frameAtRest, type SceneFrame } from '../../scene/scene-frame.ts';
import type { Theme } from '../preferences.ts';

export interface StillPictureProps {
  readonly frame: SceneFrame;
  readonly theme: Theme;
  /** What it shows. */
  readonly alt: string;
}

/** A frame that nothing moves in, as SVG. From moment to moment only what is another is drawn anew. */
export function StillPicture({ frame, theme, alt }: StillPictureProps) {
  const host = useRef<HTMLSpanElement>(null);
  const drawn = useRef<{ readonly of: string; readonly list: DisplayList } | null>(null);
  const list = useMemo(() => frameAtRest(frame), [frame]);
  useLayoutEffect(() => {
    const place = host.current;
    if (!place) return;
    const { width, height } = frame;
    const of = `${width} ${height} ${theme}`;
    const root = place.firstElementChild;
    if (root && drawn.current?.of === of) patchSvg(root, drawn.current.list, list, theme);
    // It comes from our own drawing code, never from a file or an address.
    else place.innerHTML = paintSvg(list, { width, height, theme });
    drawn.current = { of, list };
  }, [frame, list, theme]);
  return <span class="picture" role="img" aria-label={alt} ref={host} />;
}
