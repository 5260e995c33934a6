import type { Point } from './display-list.ts';

/** What is put on a rail: anything that can be set down at a place. */
interface Placed {
  set(x: number, y: number): unknown;
}

/** A path measured once: a piece is carried along it at every frame, and nothing is measured anew. */
export interface Rail {
  /** Px. */
  readonly length: number;
  /** Sets something down at a length along the path, px from the start, held to the path's ends. */
  carry(what: Placed, along: number): void;
}

/**
 * Measures a path for one piece. Pieces go forward, so the side where the piece last was is looked at first.
 * @param path scene px; a path of one point holds the piece there, an empty one at 0, 0
 */
export function railOf(path: readonly Point[]): Rail {
  const sides = path.length - 1;
  if (sides < 1) {
    const [x, y] = path[0] ?? [0, 0];
    return { length: 0, carry: (what) => what.set(x, y) };
  }
  /** Length from the start to the end of each side. */
  const ends = new Float64Array(sides);
  let length = 0;
  for (let i = 0; i < sides; i++) {
    const [from, to] = [path[i]!, path[i + 1]!];
    length += Math.hypot(to[0] - from[0], to[1] - from[1]);
    ends[i] = length;
  }
  let side = 0;
  return {
    length,
    carry(what, along) {
      if (side > 0 && along <= ends[side - 1]!) side = 0;
      while (side < sides - 1 && along > ends[side]!) side++;
      const begin = side > 0 ? ends[side - 1]! : 0;
      const span = ends[side]! - begin;
      const share = span > 0 ? Math.min(1, Math.max(0, (along - begin) / span)) : 0;
      const [from, to] = [path[side]!, path[side + 1]!];
      what.set(from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share);
    },
  };
}
