import { useMemo } from 'preact/hooks';
import type { Season } from '../../model/season.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import { type BollToPatchDrawing, bollToPatch } from '../../scene/kiosk/boll-to-patch.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { clothInks } from '../../scene/stations/sewing/cloth-inks.ts';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';
import { type Size, useBox } from './use-box.ts';
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
/** Room for words beside the patch, type sizes. */
const leastBeside = 8;
/** A letter of the display face is this wide, a line of it this tall, and a letter of the text face this wide, as shares of the type size. */
const loudWide = 0.6;
const loudTall = 1.15;
const textWide = 0.46;
const lineTall = 1.25;

/** Sizes of the words, px: the head as loud as its side of the picture holds, the line as many lines as it needs. */
function wordSizes(box: Size, textPx: number, head: string, tail: string, line: string) {
  const upright = box.height > box.width;
  const sidePx = upright ? box.width : box.width * 0.46;
  const loudest = Math.min(textPx * 4.6, box.height * 0.14);
  const room = sidePx - 2.4 * textPx;
  const loudPx = Math.min(loudest, room / (Math.max(head.length, upright ? 0 : tail.length) * loudWide));
  const linePx = upright ? textPx * 1.1 : textPx;
  const lines = Math.ceil((line.length * textWide * linePx) / room);
  return {
    upright,
    loudPx,
    linePx,
    headPx: loudPx * loudTall + textPx * 0.8,
    footPx: upright ? textPx * 0.5 : (lines * lineTall + 0.8) * linePx,
  };
}

/** One boll, and its patch at true size: measured on the glass, so that a hand can be laid on it. */
export function BollPatchView(props: BollPatchViewProps) {
  const { season, mmPerPx, textPx, theme, head, tail, line, alt } = props;
  const { host, box } = useBox<HTMLDivElement>();
  const sizes = useMemo(
    () => (box ? wordSizes(box, textPx, head, tail, line(false)) : null),
    [box, textPx, head, tail, line(false)],
  );
  const drawing = useMemo((): BollToPatchDrawing | null => {
    if (!box || !sizes || !season.sewing?.patchInchesPerBoll) return null;
    const pxPerInch = MM_PER_INCH / mmPerPx;
    return bollToPatch({
      ...box,
      locks,
      patchPx: season.sewing.patchInchesPerBoll * pxPerInch,
      seamPx: season.scenario.decisions.sewing.seamInches * pxPerInch,
      cloth: clothInks(season.scenario.decisions.weaving.finish),
      headPx: sizes.headPx,
      footPx: sizes.footPx,
      besidePx: leastBeside * textPx,
      tickPx: pxPerInch / ticksToTheInch,
      every: ticksToTheInch,
    });
  }, [box, sizes, season, mmPerPx]);
  const svg = useMemo(() => (drawing && box ? paintSvg(drawing.marks, { ...box, theme }) : ''), [drawing, box, theme]);
  const beside = drawing && box ? box.width - drawing.patch.x - drawing.patch.width - 2.2 * textPx : 0;
  const words = useStyles<HTMLDivElement>(
    drawing && sizes
      ? {
          '--patch-right': `${drawing.patch.x + drawing.patch.width}px`,
          '--patch-top': `${drawing.patch.y}px`,
          '--split': `${drawing.split}px`,
          '--loud': `${sizes.loudPx}px`,
          '--tail': `${sizes.upright ? Math.min(sizes.loudPx, beside / (tail.length * loudWide)) : sizes.loudPx}px`,
          '--line': `${sizes.linePx}px`,
        }
      : {},
  );
  return (
    <div class="kiosk-boll" ref={host} data-upright={sizes?.upright ? '' : undefined}>
      {svg ? <Picture svg={svg} alt={alt} /> : null}
      <div class="kiosk-boll-words" ref={words}>
        <h1 class="kiosk-loud on-night">{head}</h1>
        <div class="on-cotton">
          <p class="kiosk-loud">{tail}</p>
          <p class="kiosk-line">{line(drawing?.isTrueSize ?? true)}</p>
        </div>
      </div>
    </div>
  );
}
