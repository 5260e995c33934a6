import { openBollMarks } from '../cloth/boll.ts';
import { chanceOf, spread } from '../cloth/chance.ts';
import { leafMarks } from '../cloth/leaf.ts';
import { patch } from '../cloth/patch.ts';
import { piecedGround } from '../cloth/pieced-ground.ts';
import { type Box, pathLength, rectangle, ring } from '../cloth/point.ts';
import { runningStitches } from '../cloth/running-stitch.ts';
import { taperedStrip } from '../cloth/tapered-strip.ts';
import { type DisplayList, group, type Mark, type Point, type Stitch } from '../display-list.ts';
import { type ClothLook, cutPatch } from '../stations/sewing/cut-patch.ts';

export interface BollToPatch {
  readonly width: number;
  readonly height: number;
  readonly locks: 4 | 5;
  /** Side of the patch of the season, px at true size, and its seam allowance. */
  readonly patchPx: number;
  readonly seamPx: number;
  readonly cloth: ClothLook;
  /** Room that words take at the top, and beside or below the patch, px: nothing is drawn there but the ground. */
  readonly headPx: number;
  readonly footPx: number;
  /** Least room for words beside the patch of a tall picture, px. */
  readonly besidePx: number;
  /** From one tick of the ruler to the next, px; a long one every `every` ticks. */
  readonly tickPx: number;
  readonly every: number;
}

/** Where the drawing is, for what is set beside it. */
export interface BollToPatchDrawing {
  readonly marks: DisplayList;
  readonly patch: Box;
  /** Where the night side ends, px from the top or, in a wide picture, from the left. */
  readonly split: number;
  /** Whether the patch is drawn at its true size: a small screen holds it at half. */
  readonly isTrueSize: boolean;
}

/** Room left between things and the edge, px. */
const edge = 28;
const rulerTall = 44;

/** Threads over and under, as many as can be told apart across a room. */
function wovenStitches(name: string, { x, y, width }: Box): Mark[] {
  const rows = 22;
  const margin = width * 0.11;
  const pitch = (width - 2 * margin) / rows;
  const chance = chanceOf(name);
  const at = (i: number) => margin + (i + 0.5) * pitch;
  const half = pitch * 0.33;
  const across: Stitch[] = [];
  const along: Stitch[] = [];
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < rows; column++) {
      const [cx, cy] = [x + at(column) + spread(chance, pitch * 0.04), y + at(row) + spread(chance, pitch * 0.04)];
      if ((row + column) % 2) across.push([cx - half, cy, cx + half, cy]);
      else along.push([cx, cy - half, cx, cy + half]);
    }
  const thread = Math.max(2, pitch * 0.24);
  return [
    { kind: 'stitches', stitches: across, ink: 'faded', width: thread },
    { kind: 'stitches', stitches: along, ink: 'mid', width: thread },
  ];
}

/** A thread that hangs as thread does, from the boll to the corner where the patch is begun. */
function threadPath(from: Point, to: Point, sideways: boolean): Point[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const one: Point = sideways
    ? [from[0] + dx * 0.1, from[1] + Math.abs(dx) * 0.5]
    : [from[0] - Math.abs(dy) * 0.9, from[1] + dy * 0.35];
  const other: Point = sideways
    ? [to[0] - dx * 0.35, to[1] + dx * 0.18]
    : [to[0] + Math.abs(dy) * 0.75, to[1] - dy * 0.5];
  return Array.from({ length: 41 }, (_, i): Point => {
    const t = i / 40;
    const u = 1 - t;
    const axis = (a: 0 | 1) => u ** 3 * from[a] + 3 * u * u * t * one[a] + 3 * u * t * t * other[a] + t ** 3 * to[a];
    return [axis(0), axis(1)];
  });
}

function ruler(name: string, { x, y, width }: Box, tickPx: number, every: number): Mark[] {
  const ticks = Math.floor(width / tickPx);
  const stitches = Array.from({ length: ticks + 1 }, (_, i): Stitch => {
    const long = i % every === 0;
    return [x + i * tickPx, y + 4, x + i * tickPx, y + (long ? 30 : i % (every / 2) === 0 ? 21 : 14)];
  });
  return [
    patch(name, rectangle(x - 12, y, width + 24, rulerTall), 'weld', { seam: 0, shadow: 4, grain: 0 }),
    { kind: 'stitches', stitches, ink: 'ink', width: 2.6, flat: true },
  ];
}

/** The night side keeps at least this share of the picture, and takes this much where the patch leaves it. */
const leastNight = 0.3;
const mostNight = 0.74;

/** Where the two cloths meet, and at which scale the patch fits on its own: 1, or one half. */
function layOut({ width, height, headPx, footPx, besidePx, patchPx }: BollToPatch) {
  const upright = height > width;
  const aroundPx = (ruled: number) => edge * 2.6 + ruled + footPx;
  if (!upright) {
    const split = Math.round(width * 0.54);
    const fits = patchPx + aroundPx(rulerTall) + headPx <= height && patchPx + 2 * edge <= width - split;
    return { upright, split, scale: fits ? 1 : 0.5 };
  }
  const splitFor = (scale: number) =>
    Math.min(height * mostNight, height - patchPx * scale - aroundPx(scale === 1 ? rulerTall : 0));
  const scale = splitFor(1) >= height * leastNight && patchPx + 2 * edge + besidePx <= width ? 1 : 0.5;
  return { upright, split: Math.round(splitFor(scale)), scale };
}

/** The cotton side, cut by hand and laid over the night. */
function hem(upright: boolean, split: number, width: number, height: number): Mark {
  const wave = [6, -9, 4, 12, -5, -10, 7];
  const long = upright ? width : height;
  const cut = wave.map((off, i): Point => {
    const at = -20 + ((long + 40) * i) / (wave.length - 1);
    return upright ? [at, split + off] : [split + off, at];
  });
  const far: Point[] = upright
    ? [
        [width + 20, height + 20],
        [-20, height + 20],
      ]
    : [
        [width + 20, height + 20],
        [width + 20, -20],
      ];
  return patch('kiosk/hem', [...cut, ...far], 'cotton', { shadow: 6, seam: 12, thread: 'indigo', grain: 0 });
}

/** One boll on the night side, the patch its lint became on the cotton side, a madder thread from the one to the other. */
export function bollToPatch(scene: BollToPatch): BollToPatchDrawing {
  const { width, height, headPx, footPx, patchPx, seamPx } = scene;
  const { upright, split, scale } = layOut(scene);
  const side = patchPx * scale;
  const ruled = scale === 1 ? rulerTall : 0;
  const night: Box = upright ? { x: 0, y: 0, width, height: split + 20 } : { x: 0, y: 0, width: split + 20, height };
  const boll = upright
    ? { x: width * 0.5, y: headPx + (split - headPx) * 0.46, size: Math.min(width * 0.38, (split - headPx) * 0.4) }
    : { x: split * 0.5, y: headPx + (height - headPx) * 0.44, size: Math.min(split * 0.38, (height - headPx) * 0.38) };
  const box: Box = upright
    ? { x: edge * 1.5, y: split + edge * 1.4, width: side, height: side }
    : {
        x: split + (width - split - side) / 2 + edge / 2,
        y: headPx + (height - headPx - footPx - side - ruled - edge) / 2,
        width: side,
        height: side,
      };
  const from: Point = [boll.x + boll.size * (upright ? -0.4 : 0.36), boll.y + boll.size * 0.8];
  const to: Point = upright ? [box.x + side * 0.62, box.y + side * 0.12] : [box.x + side * 0.12, box.y + side * 0.9];
  const path = threadPath(from, to, !upright);
  const stem = taperedStrip(
    [
      [boll.x, boll.y + boll.size * 0.6],
      [boll.x + boll.size * 0.05, boll.y + boll.size * 1.2],
      [boll.x - boll.size * 0.06, (upright ? split : height) + 20],
    ],
    boll.size * 0.13,
    boll.size * 0.17,
  );
  const leaf = (name: string, x: number, turn: number) =>
    leafMarks(name, { x: boll.x + x * boll.size, y: boll.y + boll.size * 1.12, size: boll.size * 0.4, turn, wide: 1 }, [
      'bollGreen',
      'leafGreen',
    ]);
  const rings = [1.32, 1.52, 1.74, 1.98].flatMap((share, i) =>
    runningStitches(ring(boll.x, boll.y, boll.size * share, 60), `kiosk/ring${i}`, { on: 16, off: 12 }),
  );
  return {
    patch: box,
    split,
    isTrueSize: scale === 1,
    marks: [
      ...piecedGround('kiosk/night', night, {
        inks: ['indigo', 'indigoWarm', 'ink'],
        strips: upright ? 5 : 6,
        thread: 'mid',
      }),
      { kind: 'stitches', stitches: rings, ink: 'mid', width: 2.4, flat: true },
      group('kiosk/stem', [
        patch('kiosk/stem', stem, 'bollGreen', { shadow: 4, seam: 0, grain: null }),
        ...leaf('kiosk/leafA', -0.1, Math.PI * 0.4),
        ...leaf('kiosk/leafB', 0.14, -Math.PI * 0.42),
      ]),
      group('kiosk/boll', openBollMarks('kiosk/boll', { ...boll, turn: 0, wide: 1 }, scene.locks)),
      hem(upright, split, width, height),
      group('kiosk/patch', [
        ...cutPatch('kiosk/patch', box, seamPx * scale, scene.cloth),
        ...(scene.cloth.printed ? [] : wovenStitches('kiosk/woven', box)),
      ]),
      group(
        'kiosk/ruler',
        ruled > 0
          ? ruler(
              'kiosk/ruler',
              { x: box.x, y: box.y + side + edge * 0.6, width: side, height: ruled },
              scene.tickPx,
              scene.every,
            )
          : [],
      ),
      group('kiosk/thread', [
        {
          kind: 'stitches',
          stitches: path.slice(1).map((point, i): Stitch => [...path[i]!, ...point]),
          ink: 'madder',
          width: Math.max(5, pathLength(path) * 0.006),
        },
      ]),
    ],
  };
}
