import { useMemo } from 'preact/hooks';
import type { DisplayList } from '../../../scene/display-list.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { Picture } from '../../../ui/picture.tsx';
import { useWidth } from '../../../ui/use-width.ts';
import { useTheme } from '../use-theme.ts';

export interface DrawnPictureProps {
  /** What the picture shows, for whoever cannot see it. */
  readonly alt: string;
  /** Never drawn wider, px. */
  readonly widest?: number;
  /** Draws at a width, px; changes only when what it shows does. */
  readonly draw: (width: number) => { readonly marks: DisplayList; readonly height: number };
}

const firstWidth = 480;

/** A drawing of a figure at the width that the page has for it. */
export function DrawnPicture({ alt, widest = 560, draw }: DrawnPictureProps) {
  const theme = useTheme();
  const [place, measured] = useWidth<HTMLDivElement>(firstWidth);
  const width = Math.min(measured, widest);
  const svg = useMemo(() => {
    const { marks, height } = draw(width);
    return paintSvg(marks, { width, height, theme });
  }, [draw, width, theme]);
  return (
    <div ref={place} class="figure-picture">
      <Picture svg={svg} alt={alt} />
    </div>
  );
}
