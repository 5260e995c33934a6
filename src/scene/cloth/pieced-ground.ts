import type { InkName } from '../../style/inks.ts';
import type { Mark, Point } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
import { patch } from './patch.ts';
import type { Box } from './point.ts';
import { runningStitches } from './running-stitch.ts';

export interface GroundStyle {
  readonly inks: readonly InkName[];
  readonly strips: number;
  /** Thread along the seams; left out, the seams are not stitched. */
  readonly thread?: InkName;
}

/**
 * A ground pieced from strips that run the width of the box: two to four near shades, uneven, one in three cut across and
 * sewn together again. Outer edges are off by a few pixels, as the edge of any pieced cloth is.
 */
export function piecedGround(name: string, box: Box, { inks, strips, thread }: GroundStyle): Mark[] {
  const chance = chanceOf(name);
  const weights = Array.from({ length: strips }, () => 0.7 + chance() * 0.6);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const marks: Mark[] = [];
  const slope = () => spread(chance, Math.min(5, box.height * 0.015));
  let left = box.y;
  let right = box.y;
  weights.forEach((weight, i) => {
    const last = i === strips - 1;
    const depth = (weight / total) * box.height;
    const nextLeft = last ? box.y + box.height : left + depth + slope();
    const nextRight = last ? box.y + box.height : right + depth + slope();
    const ends = [box.x - chance() * 2.5, box.x + box.width + chance() * 2.5] as const;
    const at = (x: number, top: boolean): number => {
      const share = (x - box.x) / box.width;
      return top ? left + (right - left) * share : nextLeft + (nextRight - nextLeft) * share;
    };
    const cuts = chance() < 0.4 && box.width > 200 ? [box.x + box.width * (0.2 + 0.6 * chance())] : [];
    const stops = [ends[0], ...cuts, ends[1]];
    const lean = spread(chance, 8);
    for (let piece = 0; piece + 1 < stops.length; piece++) {
      const from = stops[piece]!;
      const to = stops[piece + 1]!;
      const inner = piece > 0;
      const outline: Point[] = [
        [from + (inner ? lean : 0), at(from, true)],
        [to + (piece + 2 < stops.length ? lean : 0), at(to, true)],
        [to - (piece + 2 < stops.length ? lean : 0), at(to, false) + 1],
        [from - (inner ? lean : 0), at(from, false) + 1],
      ];
      marks.push(
        patch(`${name}/${i}/${piece}`, outline, inks[(i + piece) % inks.length]!, {
          shadow: 0,
          seam: 0,
          scissors: 'asDrawn',
          grain: spread(chance, 0.04),
        }),
      );
    }
    if (thread && !last) {
      const seam: Point[] = [
        [ends[0] + 4, nextLeft - 4],
        [ends[1] - 4, nextRight - 4],
      ];
      marks.push({
        kind: 'stitches',
        stitches: runningStitches(seam, `${name}/seam${i}`, { on: 9, off: 8, closed: false, uneven: 0.5 }),
        ink: thread,
        width: 1.4,
      });
    }
    left = nextLeft;
    right = nextRight;
  });
  return marks;
}
