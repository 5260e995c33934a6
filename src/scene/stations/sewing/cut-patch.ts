import type { InkName } from '../../../style/inks.ts';
import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, place, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';

export interface ClothLook {
  readonly ink: InkName;
  readonly printed: boolean;
}

/** A small print: sprigs on a half-drop, as calico prints have them. */
export function printMarks(name: string, { x, y, width, height }: Box, pitch: number): Mark[] {
  const marks: Mark[] = [];
  const sprig: readonly Point[] = [
    [0, -1],
    [0.5, -0.1],
    [0, 0.3],
    [-0.5, -0.1],
  ];
  const leaves: Stitch[] = [];
  for (let column = 0; (column + 0.5) * pitch < width - pitch * 0.3; column++)
    for (let row = 0; row < height / pitch + 1; row++) {
      const cx = x + (column + 0.5) * pitch;
      const cy = y + (row + (column % 2 ? 0.5 : 1)) * pitch - pitch * 0.45;
      if (cy < y + pitch * 0.3 || cy > y + height - pitch * 0.35) continue;
      const size = pitch * 0.19;
      marks.push(
        patch(
          `${name}/sprig${column}/${row}`,
          place(sprig, { x: cx, y: cy, size, turn: column % 2 ? 0.5 : -0.5 }),
          'madder',
          {
            shadow: 0,
            seam: 0,
            grain: null,
            scissors: { miss: 0.3, snip: 60 },
          },
        ),
      );
      leaves.push(
        [cx - size * 0.7, cy + size * 0.8, cx, cy + size * 1.1],
        [cx + size * 0.7, cy + size * 0.8, cx, cy + size * 1.1],
      );
    }
  return [
    ...marks,
    { kind: 'stitches', stitches: leaves, ink: 'bollGreen', width: Math.max(1, pitch * 0.06), flat: true },
  ];
}

/** A square cut from the cloth: raw edges with a few threads loose, and the seam line where it will be sewn. */
export function cutPatch(name: string, box: Box, seamPx: number, { ink, printed }: ClothLook): Mark[] {
  const chance = chanceOf(`${name}/fray`);
  const { x, y, width, height } = box;
  const fray: Stitch[] = Array.from({ length: Math.round(width / 7) }, (_, i) => {
    const at = x + 4 + i * 7 + spread(chance, 2);
    const reach = 1.5 + chance() * 2.5;
    return [at, y + height, at + spread(chance, 1.2), y + height + reach];
  });
  const side: Stitch[] = Array.from({ length: Math.round(height / 7) }, (_, i) => {
    const at = y + 4 + i * 7 + spread(chance, 2);
    return [x + width, at, x + width + 1.5 + chance() * 2.5, at + spread(chance, 1.2)];
  });
  return [
    { kind: 'stitches', stitches: [...fray, ...side], ink, width: 1.1 },
    patch(name, rectangle(x, y, width, height), ink, { shadow: 6, seam: 0, grain: 0, scissors: 'asDrawn' }),
    ...(printed ? printMarks(name, box, Math.max(11, width / 9)) : []),
    {
      kind: 'stitches',
      stitches: runningStitches(
        rectangle(x + seamPx, y + seamPx, width - seamPx * 2, height - seamPx * 2),
        `${name}/seam`,
        { on: 10, off: 7, uneven: 0.2 },
      ),
      ink: 'madder',
      width: 2.4,
    },
  ];
}

/** The grain arrow of a pattern piece: along the warp, a head at either end. */
export function grainArrow(from: Point, to: Point, ink: InkName, width = 1.6): Mark {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const head = (at: Point, way: 1 | -1): Stitch[] =>
    [-1, 1].map((side) => [
      at[0],
      at[1],
      at[0] + way * ux * 8 - side * uy * 4.5,
      at[1] + way * uy * 8 + side * ux * 4.5,
    ]);
  return { kind: 'stitches', stitches: [[...from, ...to], ...head(from, 1), ...head(to, -1)], ink, width, flat: true };
}
