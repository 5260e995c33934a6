import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import type { TraceDrawing } from '../../scene/trace/trace-drawing.ts';
import { traceScene } from '../../scene/trace/trace-scene.ts';
import { Picture } from '../../ui/picture.tsx';
import { useWidth } from '../../ui/use-width.ts';
import type { Theme } from '../preferences.ts';
import type { Traced } from './trace-of.ts';
import { traceFormats } from './trace-text.ts';
import type { TraceWords } from './use-trace-words.ts';

export interface TraceFigureProps {
  readonly traced: Traced;
  readonly name: string;
  readonly said: TraceWords;
  readonly theme: Theme;
  readonly drawingAt: (width: number) => TraceDrawing;
}

const first = 560;
const widest = 1040;

/** The tall picture of the whole way, drawn as wide as its place is. */
export function TraceFigure({ traced, name, said, theme, drawingAt }: TraceFigureProps) {
  const words = useWords();
  const [place, measured] = useWidth<HTMLElement>(first);
  const width = Math.min(widest, measured);
  const scene = useMemo(() => traceScene(drawingAt(width), width), [drawingAt, width]);
  const svg = useMemo(() => paintSvg(scene.list, { width: scene.width, height: scene.height, theme }), [scene, theme]);
  const formats = traceFormats(words, said);
  const { middle } = traced.account.cases;
  const alt = fill(said.picture.alt, {
    project: name,
    cloth: formats.mass(middle.clothKg),
    lint: formats.mass(middle.lintKg),
    seedCotton: formats.mass(middle.seedCottonKg),
    bolls: formats.counted(middle.bolls),
    field: formats.field(middle.squareMetres),
  });
  return (
    <figure class="trace-picture" ref={place}>
      <Picture svg={svg} alt={alt} />
    </figure>
  );
}
