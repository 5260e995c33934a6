import type { InkName } from '../../style/inks.ts';
import type { DisplayList, Mark, Point } from '../display-list.ts';
import { patch } from './patch.ts';
import { type Placing, place, ring } from './point.ts';
import { runningStitches } from './running-stitch.ts';

/** One lopsided petal, pointing up: each covers the edge of the next, as the petals of a cotton flower are rolled. */
const petal: readonly Point[] = [
  [-0.08, -0.1],
  [-0.42, -0.5],
  [-0.5, -0.78],
  [-0.28, -0.98],
  [0.08, -1],
  [0.44, -0.9],
  [0.58, -0.64],
  [0.5, -0.4],
  [0.12, -0.1],
];
/** A toothed bract of the square: three of them hold bud, flower and boll. */
const bract: readonly Point[] = [
  [0, 0.1],
  [-0.34, -0.3],
  [-0.44, -0.86],
  [-0.26, -0.7],
  [-0.2, -1.1],
  [-0.06, -0.8],
  [0.04, -1.22],
  [0.14, -0.8],
  [0.28, -1.06],
  [0.3, -0.7],
  [0.46, -0.8],
  [0.34, -0.3],
];

export type CottonKind = 'upland' | 'pima';

/** What a flower is cut from, by its age in days: upland white, then pink; Pima yellow, then red. Null when it has dropped. */
export function petalInk(kind: CottonKind, ageDays: number): InkName | null {
  if (ageDays < 1) return kind === 'upland' ? 'lint' : 'weld';
  if (ageDays < 2) return kind === 'upland' ? 'blush' : 'madder';
  return null;
}

/** A flower from the front, five petals over three bracts. */
export function flowerMarks(name: string, placing: Required<Placing>, kind: CottonKind, ageDays: number): DisplayList {
  const ink = petalInk(kind, ageDays);
  if (ink === null) return [];
  const { x, y, size, turn } = placing;
  const scissors = { miss: size * 0.025, snip: size, bow: 0.02 };
  const marks: Mark[] = [];
  for (let i = 0; i < 3; i++)
    marks.push(
      patch(
        `${name}/bract${i}`,
        place(bract, { x, y, size: size * 0.98, turn: turn + 0.5 + (i * 2 * Math.PI) / 3 }),
        'bollGreen',
        { shadow: 1.2, seam: 0, scissors, grain: null },
      ),
    );
  const shut = ageDays < 1 ? 1 : 0.86;
  for (let i = 0; i < 5; i++) {
    const angle = turn + (i * 2 * Math.PI) / 5;
    const outline = place(petal, { x, y, size: size * shut, turn: angle });
    // An indigo slip shows as a hair all round, so that white holds its shape on pale sky and on white.
    const slip = place(petal, { x, y, size: size * shut + Math.max(0.9, size * 0.045), turn: angle });
    marks.push(
      patch(`${name}/slip${i}`, slip, ink === 'lint' ? 'mid' : 'walnut', {
        shadow: i ? 0 : 1.2,
        seam: 0,
        scissors: 'asDrawn',
        grain: null,
      }),
      patch(`${name}/petal${i}`, outline, ink, { shadow: 0, seam: 0, scissors: 'asDrawn', grain: null }),
    );
    if (size > 11) {
      const vein = place(
        [
          [0.02, -0.34],
          [0.06, -0.8],
        ],
        { x, y, size: size * shut, turn: angle },
      );
      const stitchery = { on: size * 0.14, off: size * 0.1, closed: false, uneven: size * 0.01 };
      marks.push({
        kind: 'stitches',
        stitches: runningStitches(vein, `${name}/vein${i}`, stitchery),
        ink: ink === 'lint' ? 'faded' : ink === 'weld' ? 'weldOnIron' : 'lint',
        width: Math.max(0.8, size * 0.045),
        flat: true,
      });
    }
  }
  if (kind === 'pima' && ageDays < 1)
    marks.push(
      patch(`${name}/throat`, ring(x, y, size * 0.32, 7, turn), 'madder', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors,
      }),
    );
  marks.push(
    patch(`${name}/heart`, ring(x, y, size * 0.2, 6, turn), 'weld', { shadow: 0, seam: 0, grain: null, scissors }),
  );
  return marks;
}

/** A square: the bud shut in its bracts, standing at the end of its stalk. */
export function squareMarks(name: string, placing: Required<Placing>): DisplayList {
  const scissors = { miss: placing.size * 0.04, snip: placing.size * 2 };
  return [
    patch(`${name}/back`, place(bract, { ...placing, wide: 1.25, size: placing.size * 0.94 }), 'leafGreen', {
      shadow: 1.2,
      seam: 0,
      scissors,
      grain: null,
    }),
    patch(`${name}/front`, place(bract, { ...placing, wide: 0.72, size: placing.size * 0.8 }), 'youngGreen', {
      shadow: 0,
      seam: 0,
      scissors,
      grain: null,
    }),
  ];
}

/** The bracts that stay under a boll, seen from the side, hanging. */
export const bractShape = bract;
