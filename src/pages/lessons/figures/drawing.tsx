import { useMemo } from 'preact/hooks';
import type { DisplayList } from '../../../scene/display-list.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { Picture } from '../../../ui/picture.tsx';
import { useWidth } from '../../../ui/use-width.ts';
import { useTheme } from '../use-theme.ts';

export interface DrawingProps {
  /** What the picture shows, in a sentence. */
  readonly alt: string;
  /** Never drawn wider, px. */
  readonly widest: number;
  readonly heightAt: (width: number) => number;
  /** Draws at a width, px. The same function as before draws the same. */
  readonly draw: (width: number) => DisplayList;
}

const firstWidth = 480;

/** A drawing of a lesson at the width it has on the page. */
export function Drawing({ alt, widest, heightAt, draw }: DrawingProps) {
  const theme = useTheme();
  const [place, measured] = useWidth<HTMLDivElement>(firstWidth);
  const width = Math.min(measured, widest);
  const svg = useMemo(
    () => paintSvg(draw(width), { width, height: heightAt(width), theme }),
    [draw, heightAt, width, theme],
  );
  return (
    <div ref={place} class="figure-picture">
      <Picture svg={svg} alt={alt} />
    </div>
  );
}
