import { inksOf, type Theme, threadScaleOf } from '../style/inks.ts';
import { type DisplayList, flatMarks, type Point, type Stitch, type Stitching, type TextMark } from './display-list.ts';
import { DISPLAY_FACE, GRAIN_DARK, GRAIN_LIGHT, SHADE, shadowOffset, TEXT_FACE } from './paint-style.ts';

/**
 * Paints marks on a 2-D canvas: a layer that stands still, a small picture that is used many times, or a whole page.
 * @param lettered whether words are painted too; their faces must have been loaded
 */
export function paintCanvas(
  context: CanvasRenderingContext2D,
  list: DisplayList,
  theme: Theme,
  lettered = false,
): void {
  context.lineCap = 'round';
  const inks = inksOf[theme];
  for (const mark of flatMarks(list)) {
    if (mark.kind === 'patch') {
      const [dx, dy] = shadowOffset(mark.shadow);
      if (mark.shadow > 0) fillOutline(context, mark.points, SHADE.color, SHADE.underCloth, dx, dy);
      fillOutline(context, mark.points, inks[mark.ink], 1, 0, 0);
      if (mark.grain) {
        strokeStitches(context, mark.grain.dark, GRAIN_DARK.color, 1, GRAIN_DARK.alpha, 0, 0);
        strokeStitches(context, mark.grain.light, GRAIN_LIGHT.color, 1, GRAIN_LIGHT.alpha, 0, 0);
      }
      if (mark.stitch) sew(context, mark.stitch, theme, true);
    } else if (mark.kind === 'stitches') {
      sew(context, mark, theme, !mark.flat);
    } else if (lettered) letter(context, mark, theme);
  }
}

/** The face of words, as CSS writes it. */
export const fontOf = ({
  size,
  italic,
  bold,
  display,
}: Omit<TextMark, 'kind' | 'text' | 'x' | 'y' | 'ink' | 'anchor'>) =>
  `${italic ? 'italic ' : ''}${display || bold ? 800 : 500} ${size}px "${display ? DISPLAY_FACE : TEXT_FACE}"`;

const alignOf = { start: 'left', middle: 'center', end: 'right' } as const;

function letter(context: CanvasRenderingContext2D, mark: TextMark, theme: Theme): void {
  context.font = fontOf(mark);
  context.textAlign = alignOf[mark.anchor];
  context.fillStyle = inksOf[theme][mark.ink];
  context.fillText(mark.text, mark.x, mark.y);
}

function fillOutline(
  context: CanvasRenderingContext2D,
  points: readonly Point[],
  color: string,
  alpha: number,
  dx: number,
  dy: number,
): void {
  context.beginPath();
  points.forEach(([x, y], i) => {
    if (i === 0) context.moveTo(x + dx, y + dy);
    else context.lineTo(x + dx, y + dy);
  });
  context.closePath();
  context.globalAlpha = alpha;
  context.fillStyle = color;
  context.fill();
  context.globalAlpha = 1;
}

function sew(context: CanvasRenderingContext2D, { stitches, ink, width }: Stitching, theme: Theme, shaded: boolean) {
  const wide = width * threadScaleOf[theme];
  if (shaded) strokeStitches(context, stitches, SHADE.color, wide, SHADE.underThread, 0.5, 1);
  strokeStitches(context, stitches, inksOf[theme][ink], wide, 1, 0, 0);
}

function strokeStitches(
  context: CanvasRenderingContext2D,
  stitches: readonly Stitch[],
  color: string,
  width: number,
  alpha: number,
  dx: number,
  dy: number,
): void {
  context.beginPath();
  for (const [x0, y0, x1, y1] of stitches) {
    context.moveTo(x0 + dx, y0 + dy);
    // A line of no length draws no cap in some browsers: a knot is nudged.
    context.lineTo((x0 === x1 && y0 === y1 ? x1 + 0.01 : x1) + dx, y1 + dy);
  }
  context.globalAlpha = alpha;
  context.strokeStyle = color;
  context.lineWidth = width;
  context.stroke();
  context.globalAlpha = 1;
}
