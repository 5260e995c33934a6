import type { Point } from '../display-list.ts';

/**
 * A path beside another at a distance, with mitred corners.
 * @param across px to the right of the path as it runs (down, for a path that runs to the right); negative to the left
 */
export function offsetPath(path: readonly Point[], across: number): Point[] {
  return path.map((here, i) => {
    const before = path[i - 1];
    const after = path[i + 1];
    const one = before ? rightOf(before, here) : rightOf(here, after!);
    const other = after ? rightOf(here, after) : one;
    const sum: Point = [one[0] + other[0], one[1] + other[1]];
    // For unit vectors a and b the mitre is (a + b) * 2 / |a + b|^2, which reaches exactly `across` from both sides.
    const scale = 2 / (sum[0] * sum[0] + sum[1] * sum[1]);
    return [here[0] + sum[0] * scale * across, here[1] + sum[1] * scale * across];
  });
}

function rightOf(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
}
