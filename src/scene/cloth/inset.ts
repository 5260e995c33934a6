import type { Point } from '../display-list.ts';
import { distanceToOutline, isInside, signedArea } from './point.ts';

/** Longest mitre, as a multiple of the depth: a sharper corner is cut short. */
const LONGEST_MITRE = 3;
/** A point nearer to the edge than this share of the depth has been pushed through from the other side. */
const NEAR_ENOUGH = 0.93;

/**
 * The outline a seam allowance inside another.
 * @returns points all inside and at least 0.93 of the depth from the edge; empty where the cloth is too narrow
 */
export function inset(outline: readonly Point[], depth: number): Point[] {
  const turn = signedArea(outline) > 0 ? 1 : -1;
  const count = outline.length;
  const inner: Point[] = [];
  for (let i = 0; i < count; i++) {
    const before = outline[(i - 1 + count) % count]!;
    const here = outline[i]!;
    const after = outline[(i + 1) % count]!;
    const one = acrossOf(before, here);
    const other = acrossOf(here, after);
    const middle: Point = [one[0] + other[0], one[1] + other[1]];
    const length = Math.hypot(middle[0], middle[1]);
    if (length < 1e-6) continue;
    const unit: Point = [middle[0] / length, middle[1] / length];
    const reach = Math.min(LONGEST_MITRE, 1 / Math.max(0.2, unit[0] * one[0] + unit[1] * one[1]));
    inner.push([here[0] + unit[0] * depth * reach * turn, here[1] + unit[1] * depth * reach * turn]);
  }
  return inner.filter(
    (point) => isInside(point, outline) && distanceToOutline(point, outline) >= depth * NEAR_ENOUGH - 1e-9,
  );
}

/** The unit vector across a side, to its right as it runs (inwards on a clockwise outline). */
function acrossOf(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
}
