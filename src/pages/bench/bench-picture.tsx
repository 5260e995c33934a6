import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { BenchPicture as Drawn } from '../../scene/bench/true-scale.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { Picture } from '../../ui/picture.tsx';
import { useWidth } from '../../ui/use-width.ts';
import { savePng } from '../card/save-card.ts';
import type { Theme } from '../preferences.ts';
import { benchWords } from './bench-words.ts';
import { SaidText, type SaidTextProps, usePlainText } from './said-text.tsx';

const firstWidth = 520;

export interface BenchPictureProps {
  /** What is drawn, which stands under it as its caption; its numbers open their workings. */
  readonly caption: string;
  readonly numbers: SaidTextProps['numbers'];
  readonly note?: string;
  /** Name of the file it is saved under. */
  readonly file: string;
  readonly theme: Theme;
  readonly draw: (width: number) => Drawn;
  /** Changes when it is to be drawn anew. */
  readonly on: readonly unknown[];
}

/** What is drawn, at once the first time; each later drawing is a task of its own, so that a slider stays free. */
function useDrawn(draw: (width: number) => Drawn, width: number, on: readonly unknown[]): Drawn {
  const [drawn, setDrawn] = useState(() => draw(width));
  const isFirst = useRef(true);
  useEffect(() => {
    if (isFirst.current) {
      isFirst.current = false;
      return;
    }
    const timer = setTimeout(() => setDrawn(draw(width)));
    return () => clearTimeout(timer);
  }, [width, ...on]);
  return drawn;
}

/** A picture to scale, as wide as its place, with its caption and a way to save it. */
export function BenchPicture({ caption, numbers, note, file, theme, draw, on }: BenchPictureProps) {
  const { language } = useWords();
  const { pictures: said } = benchWords(language);
  const plain = usePlainText();
  const [place, room] = useWidth<HTMLDivElement>(firstWidth);
  const [isFailed, setFailed] = useState(false);
  const width = Math.max(220, Math.floor(room));
  const drawn = useDrawn(draw, width, on);
  const svg = useMemo(() => paintSvg(drawn.marks, { ...drawn, theme }), [drawn, theme]);
  const save = () =>
    savePng(`${file}.png`, drawn.marks, drawn, theme).then(
      () => setFailed(false),
      () => setFailed(true),
    );
  return (
    <figure class="bench-picture">
      <div ref={place}>
        <Picture svg={svg} alt={plain(caption, numbers)} />
      </div>
      <figcaption class="caption">
        <SaidText template={`${caption}.`} numbers={numbers} where={file} /> {note}{' '}
        <button type="button" class="bench-link no-print" onClick={save}>
          {said.save}
        </button>
        {isFailed ? <span role="status"> {said.failed}</span> : null}
      </figcaption>
    </figure>
  );
}
