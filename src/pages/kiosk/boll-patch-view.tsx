import { useMemo } from 'preact/hooks';
import type { Season } from '../../model/season.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import { type BollToPatchDrawing, bollToPatch } from '../../scene/kiosk/boll-to-patch.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { clothInks } from '../../scene/stations/sewing/cloth-inks.ts';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';
import { useBox } from './use-box.ts';
import { useStyles } from './use-styles.ts';

export interface BollPatchViewProps {
  readonly season: Season;
  readonly mmPerPx: number;
  /** Type size of the words, px. */
  readonly textPx: number;
  readonly theme: Theme;
  readonly head: string;
  readonly tail: string;
  /** What is said below, by whether the patch is at its true size. */
  readonly line: (isTrueSize: boolean) => string;
  readonly alt: string;
}

/** Locks drawn in an open boll; upland bolls have four or five (common practice). */
const locks = 5;
/** A ruler has eight ticks to the inch. */
const ticksToTheInch = 8;
/** Type sizes that the head takes at the top, and the line at the foot. */
const headLines = 3.4;
const footLines = 4.6;

/** One boll, and its patch at true size: measured on the glass, so that a hand can be laid on it. */
export function BollPatchView(props: BollPatchViewProps) {
  const { season, mmPerPx, textPx, theme, head, tail, line, alt } = props;
  const { host, box } = useBox<HTMLDivElement>();
  const drawing = useMemo((): BollToPatchDrawing | null => {
    if (!box || !season.sewing?.patchInchesPerBoll) return null;
    const pxPerInch = MM_PER_INCH / mmPerPx;
    return bollToPatch({
      ...box,
      locks,
      patchPx: season.sewing.patchInchesPerBoll * pxPerInch,
      seamPx: season.scenario.decisions.sewing.seamInches * pxPerInch,
      cloth: clothInks(season.scenario.decisions.weaving.finish),
      headPx: headLines * textPx,
      footPx: footLines * textPx,
      tickPx: pxPerInch / ticksToTheInch,
      every: ticksToTheInch,
    });
  }, [box, season, mmPerPx, textPx]);
  const svg = useMemo(() => (drawing && box ? paintSvg(drawing.marks, { ...box, theme }) : ''), [drawing, box, theme]);
  const words = useStyles<HTMLDivElement>(
    drawing
      ? {
          '--patch-left': `${drawing.patch.x}px`,
          '--patch-right': `${drawing.patch.x + drawing.patch.width}px`,
          '--patch-top': `${drawing.patch.y}px`,
          '--patch-side': `${drawing.patch.width}px`,
          '--split': `${drawing.split}px`,
        }
      : {},
  );
  return (
    <div class="kiosk-boll" ref={host} data-upright={box && box.height > box.width ? '' : undefined}>
      {svg ? <Picture svg={svg} alt={alt} /> : null}
      <div class="kiosk-boll-words" ref={words}>
        <h1 class="kiosk-loud on-night">{head}</h1>
        <p class="kiosk-loud on-cotton">{tail}</p>
        <p class="kiosk-line">{line(drawing?.isTrueSize ?? true)}</p>
      </div>
    </div>
  );
}
