import type { DisplayList, Mark, Point, Stitch, Stitching } from '../display-list.ts';
import type { Placing } from './point.ts';

const movedPoints = (points: readonly Point[], dx: number, dy: number): Point[] =>
  points.map(([x, y]): Point => [x + dx, y + dy]);
const movedStitches = (stitches: readonly Stitch[], dx: number, dy: number): Stitch[] =>
  stitches.map(([x0, y0, x1, y1]): Stitch => [x0 + dx, y0 + dy, x1 + dx, y1 + dy]);
const movedThread = (thread: Stitching, dx: number, dy: number): Stitching => ({
  ...thread,
  stitches: movedStitches(thread.stitches, dx, dy),
});

function movedMark(mark: Mark, dx: number, dy: number): Mark {
  if (mark.kind === 'group') return { ...mark, marks: movedMarks(mark.marks, dx, dy) };
  if (mark.kind === 'text') return { ...mark, x: mark.x + dx, y: mark.y + dy };
  if (mark.kind === 'stitches') return { ...mark, stitches: movedStitches(mark.stitches, dx, dy) };
  const { points, stitch, grain, ...rest } = mark;
  return {
    ...rest,
    points: movedPoints(points, dx, dy),
    ...(stitch ? { stitch: movedThread(stitch, dx, dy) } : {}),
    ...(grain ? { grain: { light: movedStitches(grain.light, dx, dy), dark: movedStitches(grain.dark, dx, dy) } } : {}),
  };
}

/** The same marks a little way off. */
const movedMarks = (list: DisplayList, dx: number, dy: number): Mark[] => list.map((mark) => movedMark(mark, dx, dy));

/** Pieces kept: more than the largest plant has in all its sizes of a week. */
const MOST_KEPT = 1500;
const kept = new Map<string, DisplayList>();

/**
 * Cuts a piece once for a size and a turn, and lays it wherever it is wanted from then on: cutting costs far more than moving,
 * and a plant of a hundred leaves is laid again every day. Sizes are held to half a pixel.
 * @param name the piece's name with everything about it that changes its cut, but size and turn
 * @param draw cuts the piece at a placing
 */
export function cutOnce(
  name: string,
  { x, y, size, turn, wide }: Required<Placing>,
  draw: (placing: Required<Placing>) => DisplayList,
): DisplayList {
  const held = Math.round(size * 2) / 2;
  const key = `${name}|${held}|${turn}|${wide}`;
  let cut = kept.get(key);
  if (!cut) {
    if (kept.size >= MOST_KEPT) kept.clear();
    cut = draw({ x: 0, y: 0, size: held, turn, wide });
    kept.set(key, cut);
  }
  return movedMarks(cut, x, y);
}
