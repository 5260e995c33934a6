import type { Point, Stitch } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
import { pathLength, spotAt } from './point.ts';

export interface Stitchery {
  /** Length on top of the cloth and below it, px. */
  readonly on?: number;
  readonly off?: number;
  readonly closed?: boolean;
  /** How uneven the hand is: ends off the line, px. */
  readonly uneven?: number;
}

/** A path turns a corner where it bends more than this, radians. */
const CORNER = 0.6;

/**
 * A running stitch that comes out even: the path is split at its corners and each side holds a whole number of
 * stitches with half a gap at either end, so that a corner always falls in a gap.
 */
export function runningStitches(
  path: readonly Point[],
  name: string,
  { on = 8, off = 6, closed = true, uneven = 0.35 }: Stitchery = {},
): Stitch[] {
  const chance = chanceOf(`${name}/thread`);
  const stitches: Stitch[] = [];
  for (const side of sidesOf(path, closed)) {
    const length = pathLength(side);
    if (length < on * 0.6) continue;
    const count = Math.max(1, Math.round(length / (on + off)));
    const pitch = length / count;
    const half = (pitch * on) / (on + off) / 2;
    for (let i = 0; i < count; i++) {
      const middle = (i + 0.5) * pitch + spread(chance, pitch * 0.05);
      const reach = half * (1 + spread(chance, 0.14));
      const from = spotAt(side, middle - reach).at;
      const to = spotAt(side, middle + reach).at;
      stitches.push([
        from[0] + spread(chance, uneven),
        from[1] + spread(chance, uneven),
        to[0] + spread(chance, uneven),
        to[1] + spread(chance, uneven),
      ]);
    }
  }
  return stitches;
}

/** Splits a path at its corners. A closed path without corners is one side that ends where it began. */
export function sidesOf(path: readonly Point[], closed: boolean): Point[][] {
  const count = path.length;
  if (count < 2) return [];
  const corners: number[] = [];
  for (let i = closed ? 0 : 1; i < (closed ? count : count - 1); i++)
    if (bendAt(path[(i - 1 + count) % count]!, path[i]!, path[(i + 1) % count]!) > CORNER) corners.push(i);
  if (!closed) {
    const stops = [0, ...corners, count - 1];
    return stops.slice(1).map((stop, i) => path.slice(stops[i]!, stop + 1));
  }
  if (corners.length === 0) return [[...path, path[0]!]];
  return corners.map((start, i) => {
    const end = corners[(i + 1) % corners.length]!;
    const side: Point[] = [path[start]!];
    for (let step = (start + 1) % count; step !== end; step = (step + 1) % count) side.push(path[step]!);
    side.push(path[end]!);
    return side;
  });
}

function bendAt(before: Point, here: Point, after: Point): number {
  const turn =
    Math.atan2(after[1] - here[1], after[0] - here[0]) - Math.atan2(here[1] - before[1], here[0] - before[0]);
  return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)));
}
