import type { InkName } from '../../style/inks.ts';
import type { DisplayList, Mark, Point, Stitch } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
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

/** Veins of a petal, the middle one first. */
const petalVeins: readonly (readonly Point[])[] = [
  [
    [0.02, -0.34],
    [0.06, -0.8],
  ],
  [
    [-0.12, -0.36],
    [-0.24, -0.82],
  ],
  [
    [0.16, -0.34],
    [0.34, -0.74],
  ],
];
/** From this radius on the flower shows its pollen, px. */
const ROOM_FOR_ANTHERS_PX = 40;

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
      const large = size > ROOM_FOR_ANTHERS_PX;
      const stitchery = large
        ? { on: size * 0.1, off: size * 0.06, closed: false, uneven: size * 0.006 }
        : { on: size * 0.14, off: size * 0.1, closed: false, uneven: size * 0.01 };
      const veins = (large ? petalVeins : petalVeins.slice(0, 1)).map((vein) =>
        place(vein, { x, y, size: size * shut, turn: angle }),
      );
      marks.push({
        kind: 'stitches',
        stitches: veins.flatMap((vein, k) => runningStitches(vein, `${name}/vein${i}/${k}`, stitchery)),
        ink: ink === 'lint' ? 'faded' : ink === 'weld' ? 'weldOnIron' : 'lint',
        width: Math.max(0.8, size * (large ? 0.022 : 0.045)),
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
  if (size > ROOM_FOR_ANTHERS_PX) marks.push(...antherMarks(name, x, y, size));
  return marks;
}

/** The column in the middle of a large flower: pollen in knots around the stigma. */
function antherMarks(name: string, x: number, y: number, size: number): Mark[] {
  const chance = chanceOf(`${name}/anthers`);
  const knots = Array.from({ length: 26 }, (_, i): Stitch => {
    const angle = i * 2.4;
    const reach = size * (0.07 + 0.21 * Math.sqrt(i / 26)) + spread(chance, size * 0.008);
    const [px, py] = [x + Math.cos(angle) * reach, y + Math.sin(angle) * reach];
    return [px, py, px, py];
  });
  return [
    { kind: 'stitches', stitches: knots, ink: 'walnut', width: size * 0.052, flat: true },
    { kind: 'stitches', stitches: knots, ink: 'weldPale', width: size * 0.034, flat: true },
    patch(`${name}/stigma`, ring(x, y, size * 0.05, 5, 0.3), 'muslin', { shadow: 0, seam: 0, grain: null }),
  ];
}

/** A square: the bud shut in its bracts, standing at the end of its stalk. */
export function squareMarks(name: string, placing: Required<Placing>): DisplayList {
  const scissors = { miss: placing.size * 0.04, snip: placing.size * 2 };
  const cut = (part: string, wide: number, scale: number, ink: InkName, shadow: 0 | 1.2) =>
    patch(`${name}/${part}`, place(bract, { ...placing, wide, size: placing.size * scale }), ink, {
      shadow,
      seam: 0,
      scissors,
      grain: null,
    });
  // Dark behind light, so that a square shows on the leaves.
  return [cut('back', 1.3, 1, 'bollGreen', 1.2), cut('front', 0.98, 0.8, 'youngGreen', 0)];
}

/** A large bract: a heart with long teeth. */
const toothedBract: readonly Point[] = [
  [0, 0.3],
  [-0.3, 0.34],
  [-0.52, 0.08],
  [-0.6, -0.26],
  [-0.74, -0.66],
  [-0.5, -0.5],
  [-0.54, -0.98],
  [-0.34, -0.66],
  [-0.3, -1.22],
  [-0.14, -0.78],
  [0, -1.36],
  [0.14, -0.78],
  [0.3, -1.22],
  [0.34, -0.66],
  [0.54, -0.98],
  [0.5, -0.5],
  [0.74, -0.66],
  [0.6, -0.26],
  [0.52, 0.08],
  [0.3, 0.34],
];

/**
 * A square drawn large: the bud between its bracts, the tip of the petals coming out in the last days.
 * @param grown from first seen (0) to opening (1)
 */
export function largeSquareMarks(
  name: string,
  x: number,
  y: number,
  mostSize: number,
  grown: number,
  kind: CottonKind,
): DisplayList {
  const size = mostSize * (0.42 + 0.5 * Math.min(1, grown));
  const scissors = { miss: size * 0.012, snip: size * 0.5, bow: 0.01 };
  const sewn = { seam: size * 0.07, stitchery: { on: size * 0.07, off: size * 0.055 }, grain: null };
  const foot = y + size * 0.62;
  const bractAt = (part: string, turn: number, scale: number, ink: InkName, wide = 1): Mark =>
    patch(`${name}/${part}`, place(toothedBract, { x, y: foot - size * 0.28, size: size * scale, turn, wide }), ink, {
      shadow: 2.6,
      scissors,
      thread: 'thread',
      ...sewn,
    });
  const stalk = patch(
    `${name}/stalk`,
    [
      [x - size * 0.07, foot - size * 0.1],
      [x + size * 0.07, foot - size * 0.1],
      [x + size * 0.1, foot + size * 0.52],
      [x - size * 0.02, foot + size * 0.54],
    ],
    'leafGreen',
    { shadow: 2.6, seam: 0, grain: null, scissors },
  );
  const shows = Math.max(0, (grown - 0.72) / 0.28);
  const budTop = foot - size * (0.72 + 0.62 * shows);
  const bud = patch(
    `${name}/bud`,
    [
      [x - size * 0.3, foot - size * 0.3],
      [x - size * 0.26, budTop + size * 0.3],
      [x, budTop],
      [x + size * 0.28, budTop + size * 0.32],
      [x + size * 0.3, foot - size * 0.3],
    ],
    kind === 'pima' ? 'weldPale' : 'muslin',
    { shadow: 1.2, seam: size * 0.06, thread: 'faded', scissors, grain: null },
  );
  return [
    stalk,
    bractAt('bract/left', -0.42, 0.84, 'bollGreen'),
    bractAt('bract/right', 0.42, 0.84, 'bollGreen'),
    bud,
    bractAt('bract/front', 0.03, 0.8, 'leafGreen', 0.86),
  ];
}

/** Three toothed bracts spread out behind a large boll, seen from its tip. */
export const bractsBehind = (name: string, { x, y, size, turn }: Required<Placing>): DisplayList =>
  [0, 1, 2].map((i) =>
    patch(
      `${name}/bract${i}`,
      place(toothedBract, { x, y, size: size * 1.06, turn: turn + (i * 2 * Math.PI) / 3, wide: 1.25 }),
      'leafGreen',
      { shadow: 2.6, seam: 0, grain: null, scissors: { miss: size * 0.01, snip: size * 0.6, bow: 0.01 } },
    ),
  );

/** The bracts that stay under a boll, seen from the side, hanging. */
export const bractShape = bract;
