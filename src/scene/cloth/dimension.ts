import type { InkName } from '../../style/inks.ts';
import type { Mark, Point } from '../display-list.ts';
import { lettered } from './lettering.ts';

export interface DimensionStyle {
  readonly ink: InkName;
  readonly size: number;
  /** Which side of the line the words stand on, as it runs: over a line that runs to the right, left of one that runs down. */
  readonly words?: 'before' | 'after';
}

/**
 * A dimension line: a line between two short ones, with the measure beside it. Level or upright.
 * @param text the measure with its unit, already translated
 */
export function dimension(
  from: Point,
  to: Point,
  text: string,
  { ink, size, words = 'before' }: DimensionStyle,
): Mark[] {
  const level = Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]);
  const end = 5;
  const tick = ([x, y]: Point) => (level ? ([x, y - end, x, y + end] as const) : ([x - end, y, x + end, y] as const));
  const arrow = ([x, y]: Point, way: 1 | -1) =>
    [-1, 1].map((side) =>
      level ? ([x, y, x + way * 6, y + side * 3] as const) : ([x, y, x + side * 3, y + way * 6] as const),
    );
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const before = words === 'before';
  const at: Point = level
    ? [middle[0], before ? middle[1] - 6 : middle[1] + size]
    : [middle[0] + (before ? -9 : 9), middle[1] + size * 0.34];
  const forward = level ? Math.sign(to[0] - from[0]) : Math.sign(to[1] - from[1]);
  return [
    {
      kind: 'stitches',
      stitches: [
        [...from, ...to],
        tick(from),
        tick(to),
        ...arrow(from, forward >= 0 ? 1 : -1),
        ...arrow(to, forward >= 0 ? -1 : 1),
      ],
      ink,
      width: 1.4,
      flat: true,
    },
    ...(text === ''
      ? []
      : lettered([text], at, { size, ink, bold: true, anchor: level ? 'middle' : before ? 'end' : 'start' })),
  ];
}
