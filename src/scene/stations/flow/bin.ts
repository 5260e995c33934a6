import type { InkName } from '../../../style/inks.ts';
import { partCloth, type Shown } from '../../cloth/part-cloth.ts';
import { partStitches, partThreadWidth } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import type { Box } from '../../cloth/point.ts';
import type { Mark, Point } from '../../display-list.ts';

/** Walls of a bin lean in by this share of its width. */
const LEAN = 0.03;
/** Room between a bin's walls and what lies in it, px. */
const WALL = 5;

/** An open bin, wider at its mouth. */
export function binMarks(name: string, { x, y, width, height }: Box, ink: InkName): Mark[] {
  const lean = width * LEAN;
  const outline: Point[] = [
    [x, y],
    [x + width, y],
    [x + width - lean, y + height],
    [x + lean, y + height],
  ];
  return [
    patch(name, outline, ink, {
      shadow: 2.6,
      seam: Math.min(width, height) > 26 ? 3.4 : 0,
      threadWidth: 1.4,
      scissors: { miss: 1, snip: 60 },
    }),
  ];
}

/** How much a bin holds, px of area. */
export const binAreaPx = ({ width, height }: Box): number => (width - 2 * WALL) * (height - WALL);

/**
 * What lies in a bin: its area is its mass.
 * @param areaPx area of it, px
 */
export function binFill(name: string, box: Box, part: Shown, areaPx: number): Mark[] {
  const width = box.width - 2 * WALL;
  const depth = Math.min(box.height - WALL * 0.5, areaPx / width);
  if (depth < 0.4) return [];
  const left = box.x + WALL;
  const floor = box.y + box.height - WALL * 0.5;
  const top = floor - depth;
  // The heap's back is a little uneven; what lies above its mean lies below it elsewhere.
  const wave = Math.min(3, depth * 0.2);
  const back: Point[] = Array.from(
    { length: 7 },
    (_, i): Point => [left + (width * i) / 6, top + (i % 2 ? -wave : wave)],
  );
  const { fill, thread } = partCloth[part];
  const row = (y: number): Mark => ({
    kind: 'stitches',
    stitches: partStitches(
      part,
      [
        [left + 4, y],
        [left + width - 4, y],
      ],
      `${name}/row${Math.round(floor - y)}`,
      0.8,
    ),
    ink: part === 'lint' ? 'mid' : thread,
    width: partThreadWidth(part) * 0.75,
  });
  const rows: Mark[] = [];
  for (let y = floor - 8; y > top + 6; y -= 14) rows.push(row(y));
  return [
    patch(name, [...back, [left + width, floor], [left, floor]], part === 'lint' ? 'lint' : fill, {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    ...rows,
  ];
}
