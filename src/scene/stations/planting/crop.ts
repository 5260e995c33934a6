import type { Point } from '../../display-list.ts';

/** The left and right edge of what may be seen, px. */
export interface CropEdges {
  readonly left: number;
  readonly right: number;
}

/** Cuts an outline off at one upright line, keeping the side where `depth` is not negative. */
function cutAt(points: readonly Point[], depth: (point: Point) => number): Point[] {
  return points.flatMap((point, i) => {
    const before = points.at(i - 1)!;
    const [here, there] = [depth(point), depth(before)];
    const kept: Point[] = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = there / (there - here);
    const crossing: Point = [before[0] + (point[0] - before[0]) * share, before[1] + (point[1] - before[1]) * share];
    return [crossing, ...kept];
  });
}

/** What is left of an outline between two upright edges; null when nothing is. */
export function cropped(points: readonly Point[], { left, right }: CropEdges): Point[] | null {
  const kept = cutAt(
    cutAt(points, ([x]) => x - left),
    ([x]) => right - x,
  );
  return kept.length < 3 ? null : kept;
}
