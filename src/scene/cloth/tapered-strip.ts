import type { Point } from '../display-list.ts';
import { pathLength } from './point.ts';

/** The outline of a strip along a path that narrows from one width to another. */
export function taperedStrip(path: readonly Point[], fromWidth: number, toWidth: number): Point[] {
  const total = pathLength(path) || 1;
  const left: Point[] = [];
  const right: Point[] = [];
  let run = 0;
  path.forEach((here, i) => {
    const before = path[i - 1] ?? here;
    const after = path[i + 1] ?? here;
    run += Math.hypot(here[0] - before[0], here[1] - before[1]);
    const along: Point = [after[0] - before[0], after[1] - before[1]];
    const length = Math.hypot(along[0], along[1]) || 1;
    const half = (fromWidth + (toWidth - fromWidth) * (run / total)) / 2;
    const [nx, ny] = [(-along[1] / length) * half, (along[0] / length) * half];
    left.push([here[0] + nx, here[1] + ny]);
    right.push([here[0] - nx, here[1] - ny]);
  });
  return [...left, ...right.reverse()];
}
