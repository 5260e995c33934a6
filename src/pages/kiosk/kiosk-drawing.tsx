import { useMemo } from 'preact/hooks';
import type { DisplayList } from '../../scene/display-list.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';
import { useBox } from './use-box.ts';

export interface KioskDrawingProps {
  readonly draw: (width: number, height: number) => DisplayList;
  /** What the drawing is made from: it is drawn anew when one of these changes. */
  readonly of: readonly unknown[];
  readonly theme: Theme;
  readonly alt: string;
}

/** A drawing that fills its place. */
export function KioskDrawing({ draw, of, theme, alt }: KioskDrawingProps) {
  const { host, box } = useBox<HTMLDivElement>();
  const svg = useMemo(() => (box ? paintSvg(draw(box.width, box.height), { ...box, theme }) : ''), [box, theme, ...of]);
  return (
    <div class="kiosk-scene" ref={host}>
      {svg ? <Picture svg={svg} alt={alt} /> : null}
    </div>
  );
}
