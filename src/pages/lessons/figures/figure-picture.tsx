import { useMemo } from 'preact/hooks';
import type { DisplayList } from '../../../scene/display-list.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { Picture } from '../../../ui/picture.tsx';
import { useWidth } from '../../../ui/use-width.ts';
import { useTheme } from '../use-theme.ts';

const firstWidth = 480;
const widest = 560;

export interface FigurePictureProps {
  /** What the picture shows, for whoever cannot see it. */
  readonly alt: string;
  /** Marks and height for a width, px; the same function as long as nothing changes. */
  readonly draw: (width: number) => { readonly marks: DisplayList; readonly height: number };
}

/** A drawing of a figure, laid out for the width there is. */
export function FigurePicture({ alt, draw }: FigurePictureProps) {
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
