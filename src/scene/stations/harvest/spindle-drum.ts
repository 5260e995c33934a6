import { patch } from '../../cloth/patch.ts';
import { place, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';

/** Picker bars round the drum: twelve to sixteen are usual. */
const BARS = 12;
const LUGS = 12;

/**
 * A drum of spindles from above: bars round its rim, each with its topmost spindle, a barbed cone that points outwards.
 * @param radius from the middle to the spindles' tips, px
 */
export function spindleDrum(name: string, x: number, y: number, radius: number): Mark[] {
  const marks: Mark[] = [];
  const barbs: Stitch[] = [];
  for (let i = 0; i < BARS; i++) {
    const turn = (i / BARS) * 2 * Math.PI;
    const at = (points: readonly Point[]) => place(points, { x, y, size: radius, turn });
    marks.push(
      patch(
        `${name}/spindle${i}`,
        at([
          [-0.062, -0.56],
          [0.062, -0.56],
          [0.05, -0.9],
          [0.018, -1],
          [-0.018, -1],
          [-0.05, -0.9],
        ]),
        'muslin',
        { shadow: 2.6, seam: 0, grain: null, scissors: { miss: radius * 0.004 } },
      ),
    );
    // Barbs point back towards the drum, so that they hold what they wind up; three rows of them.
    for (let step = 0; step < 5; step++) {
      const out = -0.65 - step * 0.065;
      const half = 0.054 - step * 0.005;
      const [a, b, c, d] = at([
        [-half, out],
        [-half * 0.1, out + 0.035],
        [half * 0.1, out + 0.012],
        [half, out + 0.047],
      ]) as [Point, Point, Point, Point];
      barbs.push([...a, ...b], [...c, ...d]);
    }
  }
  marks.push({ kind: 'stitches', stitches: barbs, ink: 'iron', width: Math.max(1.1, radius * 0.013), flat: true });
  marks.push(
    patch(`${name}/drum`, ring(x, y, radius * 0.62, 24), 'madder', {
      shadow: 4,
      seam: radius * 0.06,
      scissors: { miss: radius * 0.006, snip: 80 },
    }),
  );
  for (let i = 0; i < BARS; i++) {
    const turn = (i / BARS) * 2 * Math.PI;
    marks.push(
      patch(
        `${name}/bar${i}`,
        place(
          [
            [-0.055, -0.6],
            [0.055, -0.6],
            [0.055, -0.47],
            [-0.055, -0.47],
          ],
          { x, y, size: radius, turn },
        ),
        'indigo',
        { shadow: 1.2, seam: 0, grain: null, scissors: { miss: radius * 0.006 } },
      ),
    );
  }
  marks.push(
    {
      kind: 'stitches',
      stitches: runningStitches(ring(x, y, radius * 0.36, 30), `${name}/ring`, { on: 8, off: 6 }),
      ink: 'thread',
      width: 1.8,
    },
    patch(`${name}/hub`, ring(x, y, radius * 0.2, 11), 'indigo', {
      shadow: 2.6,
      seam: radius > 80 ? radius * 0.045 : 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    patch(`${name}/shaft`, ring(x, y, radius * 0.07, 6), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.4 },
    }),
  );
  return marks;
}

/** A doffer from above: the topmost of a stack of lugged rubber discs. */
export function doffer(name: string, x: number, y: number, radius: number): Mark[] {
  const outline = Array.from({ length: LUGS }, (_, i): Point[] => {
    const at = (share: number, reach: number): Point => {
      const angle = ((i + share) / LUGS) * 2 * Math.PI;
      return [x + Math.cos(angle) * reach * radius, y + Math.sin(angle) * reach * radius];
    };
    return [at(0, 0.82), at(0.16, 1), at(0.5, 1), at(0.66, 0.82)];
  }).flat();
  return [
    patch(name, outline, 'weldPale', { shadow: 4, seam: 0, scissors: { miss: 0.6, snip: radius } }),
    {
      kind: 'stitches',
      stitches: runningStitches(ring(x, y, radius * 0.66, 24), `${name}/ring`, { on: 6, off: 5 }),
      ink: 'walnut',
      width: 1.7,
    },
    patch(`${name}/hub`, ring(x, y, radius * 0.3, 9), 'walnut', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.6 },
    }),
    patch(`${name}/shaft`, ring(x, y, radius * 0.11, 6), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.3 },
    }),
  ];
}

/** The wet pad that wipes the spindles: a column of fingers, seen from above as one comb. */
export function wetPad(name: string, x: number, y: number, size: number, turn: number): Mark[] {
  const teeth = 5;
  const outline: Point[] = [
    [-0.5, 0.5],
    [-0.5, 0],
  ];
  for (let i = 0; i < teeth; i++) {
    const from = -0.5 + i / teeth;
    outline.push([from + 0.02, -0.28], [from + 0.13, -0.3], [from + 0.14, 0]);
  }
  outline.push([0.5, 0], [0.5, 0.5]);
  const pad = place(outline, { x, y, size, turn });
  return [patch(name, pad, 'mid', { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 0.7 } })];
}

/** The empty burs of a plant that has been gathered, from above. */
export const emptyBurs = (name: string, x: number, y: number, size: number, turn: number): Mark[] =>
  [0, 1, 2, 3, 4].map((i) =>
    patch(
      `${name}/${i}`,
      place(
        [
          [-0.14, -0.14],
          [-0.3, -0.5],
          [0, -1],
          [0.3, -0.48],
          [0.14, -0.14],
        ],
        { x, y, size, turn: turn + (i / 5) * 2 * Math.PI },
      ),
      i % 2 ? 'walnut' : 'walnutWarm',
      { shadow: 1.2, seam: 0, grain: null, scissors: { miss: 0.6 } },
    ),
  );
