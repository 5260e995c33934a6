import type { InkName } from '../../style/inks.ts';
import type { Mark, Point, Stitch } from '../display-list.ts';
import { patch } from './patch.ts';
import { place } from './point.ts';

export interface RulerTick {
  /** Distance from the start of the ruler, px. */
  readonly at: number;
  /** Already translated; a tick without words is a short one. */
  readonly text?: string;
}

/** A chalk rule drawn on the cloth: a line with ticks to one side, words beside the long ones. */
export function chalkRule(
  from: Point,
  length: number,
  ticks: readonly RulerTick[],
  options: {
    readonly direction: 'up' | 'right';
    readonly ink: InkName;
    readonly size: number;
  },
): Mark[] {
  const up = options.direction === 'up';
  const stitches: Stitch[] = [[from[0], from[1], from[0] + (up ? 0 : length), from[1] - (up ? length : 0)]];
  const marks: Mark[] = [];
  for (const { at, text } of ticks) {
    const long = text === undefined ? 5 : 10;
    const x = from[0] + (up ? 0 : at);
    const y = from[1] - (up ? at : 0);
    stitches.push(up ? [x, y, x + long, y] : [x, y, x, y + long]);
    if (text !== undefined)
      marks.push({
        kind: 'text',
        text,
        x: up ? x - 7 : x,
        y: up ? y + options.size * 0.34 : y + 12 + options.size * 0.8,
        size: options.size,
        ink: options.ink,
        anchor: up ? 'end' : 'middle',
      });
  }
  return [{ kind: 'stitches', stitches, ink: options.ink, width: 1.5, flat: true }, ...marks];
}

/**
 * A notch in the edge of a ruler, its point at a place: one marks yours, two a published value.
 * @param points which way the point looks
 */
export function notchMarks(name: string, at: Point, points: 'down' | 'right', ink: InkName, double = false): Mark[] {
  const shape: readonly Point[] = [
    [0, 0],
    [-6, -10],
    [6, -10],
  ];
  const turn = points === 'down' ? 0 : -Math.PI / 2;
  return (double ? [-7, 7] : [0]).map((shift, i) => {
    const [x, y] = points === 'down' ? [at[0] + shift, at[1]] : [at[0], at[1] + shift];
    return patch(`${name}/${i}`, place(shape, { x, y, turn }), ink, {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.4 },
    });
  });
}
