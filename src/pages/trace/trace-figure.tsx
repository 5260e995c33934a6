import { useEffect, useRef, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { shortParts } from '../../scene/trace/short-parts.ts';
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
  /** What is drawn at a width, with letters so many times their usual size. */
  readonly drawingAt: (width: number, letters: number) => TraceDrawing;
}

const first = 560;
const widest = 1040;
const usualRootPx = 16;

/** How much larger than usual the reader's letters are: on a projector, or by the browser's own setting. */
const letterScale = (): number =>
  Math.max(1, Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / usualRootPx);

/** One picture: its stretches painted apart, each as large as the whole, to lie one over the other. */
interface Painted {
  readonly id: number;
  readonly stretches: readonly string[];
}

/** The steps of a painting, each short enough for a task of its own; the last has all the stretches. */
function* painting({ drawingAt, theme }: Pick<TraceFigureProps, 'drawingAt' | 'theme'>, width: number, id: number) {
  const { list, ...size } = traceScene(drawingAt(width, letterScale()), width);
  let stretches: readonly string[] = [];
  for (const mark of shortParts(list)) {
    yield { id, stretches };
    stretches = [...stretches, paintSvg([mark], { width: size.width, height: size.height, theme })];
  }
  yield { id, stretches };
}

const paintedAtOnce = (...of: Parameters<typeof painting>): Painted => [...painting(...of)].at(-1)!;

/** The picture in sight, and the one that is being painted behind it. */
function usePainted(props: Pick<TraceFigureProps, 'drawingAt' | 'theme'>, width: number): readonly Painted[] {
  const { drawingAt, theme } = props;
  const [pictures, setPictures] = useState<readonly Painted[]>(() => [paintedAtOnce(props, width, 0)]);
  const runs = useRef(0);
  useEffect(() => {
    const id = runs.current++;
    // The first is there already.
    if (id === 0) return;
    let timer = 0;
    let steps: ReturnType<typeof painting> | null = null;
    const go = () => {
      steps ??= painting({ drawingAt, theme }, width, id);
      const { value, done } = steps.next();
      if (done) setPictures((before) => before.slice(-1));
      else {
        setPictures((before) => [before[0]!, value]);
        next();
      }
    };
    // A frame between two steps: what each brings is laid out by itself.
    const next = () => {
      timer = requestAnimationFrame(() => {
        timer = window.setTimeout(go);
      });
    };
    next();
    return () => {
      cancelAnimationFrame(timer);
      clearTimeout(timer);
    };
  }, [drawingAt, width, theme]);
  return pictures;
}

/** The tall picture of the whole way, drawn as wide as its place is: at once the first time, later step by step. */
export function TraceFigure({ traced, name, said, theme, drawingAt }: TraceFigureProps) {
  const words = useWords();
  const [place, measured] = useWidth<HTMLElement>(first);
  const width = Math.min(widest, measured);
  const pictures = usePainted({ drawingAt, theme }, width);
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
      {pictures.map(({ id, stretches }, at) => (
        <div
          key={id}
          class={at === 0 ? 'trace-layers' : 'trace-layers trace-next'}
          role="img"
          aria-label={alt}
          aria-hidden={at > 0}
        >
          {stretches.map((svg, i) => (
            <Picture key={i} svg={svg} alt="" />
          ))}
        </div>
      ))}
    </figure>
  );
}
