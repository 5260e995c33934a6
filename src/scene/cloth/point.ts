import type { Point } from '../display-list.ts';

export const distance = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** The point a share of the way from a to b. */
export const between = (a: Point, b: Point, share: number): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

export interface Placing {
  readonly x?: number;
  readonly y?: number;
  /** Size of one unit, px; `wide` stretches x alone. */
  readonly size?: number;
  readonly wide?: number;
  /** Radians, clockwise on screen. */
  readonly turn?: number;
}

/** Scales, turns, then moves points drawn around the origin. */
export function place(points: readonly Point[], { x = 0, y = 0, size = 1, wide = 1, turn = 0 }: Placing): Point[] {
  const cos = Math.cos(turn) * size;
  const sin = Math.sin(turn) * size;
  return points.map(([px, py]) => [x + px * wide * cos - py * sin, y + px * wide * sin + py * cos]);
}

export const rectangle = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** A polygon on an ellipse. A shape with few sides is cut, not turned on a lathe. */
export const ring = (x: number, y: number, radius: number, sides: number, start = 0, squash = 1): Point[] =>
  Array.from({ length: sides }, (_, side) => {
    const angle = start + (side / sides) * 2 * Math.PI;
    return [x + radius * Math.cos(angle), y + radius * squash * Math.sin(angle)];
  });

/** Points on an arc, both ends included; angles in radians. */
export const arc = (x: number, y: number, radius: number, from: number, to: number, steps: number): Point[] =>
  Array.from({ length: steps + 1 }, (_, step) => {
    const angle = from + ((to - from) * step) / steps;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** Twice-signed area halved: positive when the points run clockwise on screen. */
export function signedArea(points: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i < points.length; i++) {
    const a = points[i]!;
    const b = points[(i + 1) % points.length]!;
    sum += a[0] * b[1] - b[0] * a[1];
  }
  return sum / 2;
}

/** Length of a path, px. */
export function pathLength(path: readonly Point[]): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distance(path[i - 1]!, path[i]!);
  return sum;
}

/** A place on a path: where, and which way the path runs there. */
export interface Spot {
  readonly at: Point;
  readonly along: Point;
}

/** The spot a length along a path, held to its ends. */
export function spotAt(path: readonly Point[], length: number): Spot {
  let left = Math.max(0, length);
  for (let i = 1; i < path.length; i++) {
    const a = path[i - 1]!;
    const b = path[i]!;
    const side = distance(a, b);
    if (left <= side || i === path.length - 1) {
      const share = side > 0 ? Math.min(1, left / side) : 0;
      const unit = side || 1;
      return { at: between(a, b, share), along: [(b[0] - a[0]) / unit, (b[1] - a[1]) / unit] };
    }
    left -= side;
  }
  return { at: path[0] ?? [0, 0], along: [1, 0] };
}

/** How far a point is from the straight piece from a to b. */
function distanceToSide(point: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const squared = dx * dx + dy * dy;
  const share = squared > 0 ? ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / squared : 0;
  return distance(point, between(a, b, Math.min(1, Math.max(0, share))));
}

/** How far a point is from the nearest side of a closed outline. */
export function distanceToOutline(point: Point, outline: readonly Point[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < outline.length; i++)
    nearest = Math.min(nearest, distanceToSide(point, outline[i]!, outline[(i + 1) % outline.length]!));
  return nearest;
}

/** Whether a point lies inside a closed outline. */
export function isInside(point: Point, outline: readonly Point[]): boolean {
  let inside = false;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const a = outline[i]!;
    const b = outline[j]!;
    const crosses = a[1] > point[1] !== b[1] > point[1];
    if (crosses && point[0] < ((b[0] - a[0]) * (point[1] - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  }
  return inside;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function boundsOf(points: readonly Point[]): Box {
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
