import type { StationId } from '../../model/station.ts';
import { chanceOf, spread } from '../cloth/chance.ts';
import { cutEdge } from '../cloth/cut-edge.ts';
import { inset } from '../cloth/inset.ts';
import { patch } from '../cloth/patch.ts';
import { type Box, between, boundsOf, distance, pathLength, place, ring, signedArea } from '../cloth/point.ts';
import { runningStitches } from '../cloth/running-stitch.ts';
import type { DisplayList, Mark, Point, Stitch } from '../display-list.ts';
import type { BlockPiece } from './block-piece.ts';
import { blockOf } from './blocks.ts';

/** Chalked: possible. Pinned: being decided. Sewn: chosen and counted. */
export type BlockState = 'chalked' | 'pinned' | 'sewn';

/** A pinned piece lies cut, not yet joined to its neighbours: smaller by this share. */
const PINNED_SHRINK = 0.9;

/** One block of the quilt in its box, a little off square. */
export function blockMarks(station: StationId, state: BlockState, box: Box): DisplayList {
  const name = `block/${station}`;
  const corners = offSquare(box, name);
  const onCloth = (points: readonly Point[]) => points.map((point) => onCorners(point, corners));
  const unit = Math.min(box.width, box.height);
  if (state === 'chalked') return chalked(name, blockOf(station), corners, onCloth, unit);
  if (state === 'pinned') return pinned(name, blockOf(station), corners, onCloth, unit);
  return blockOf(station).map((piece, i) => sewnPiece(`${name}/${i}`, piece, onCloth(piece.points), unit));
}

/** Thread and seam shrink with the block, so that a block 40 px wide stays clear. */
function sewnPiece(name: string, piece: BlockPiece, points: readonly Point[], unit: number): Mark {
  const outline = cutEdge(points, name, {
    miss: piece.laidOn ? unit * 0.004 : unit * 0.002,
    snip: unit * 0.3,
    bow: 0.008,
  });
  // Twice the area over the outline's length: the radius of the round that fits inside.
  const roomPx = (2 * Math.abs(signedArea(outline))) / pathLength([...outline, outline[0]!]);
  const seam = Math.min(6, unit * 0.034);
  return patch(name, outline, piece.ink, {
    scissors: 'asDrawn',
    shadow: piece.laidOn ? (unit > 90 ? 2.6 : unit > 50 ? 1.2 : 0) : 0,
    seam: unit > 70 && roomPx > seam * 2.2 ? seam : 0,
    stitchery: { on: Math.max(3, unit * 0.034), off: Math.max(2.4, unit * 0.026), uneven: unit * 0.002 },
    threadWidth: Math.max(0.9, Math.min(1.7, unit * 0.0085)),
    grain: unit > 110 ? chanceOf(name)() * Math.PI : null,
  });
}

type OnCloth = (points: readonly Point[]) => Point[];

function pinned(name: string, pieces: readonly BlockPiece[], corners: Corners, onCloth: OnCloth, unit: number): Mark[] {
  const ground = patch(`${name}/ground`, corners, 'muslin', { shadow: 2.6, seam: 0, grain: null });
  const cut = pieces.map((piece, i): Mark => {
    const box = boundsOf(piece.points);
    const [cx, cy] = [box.x + box.width / 2, box.y + box.height / 2];
    const size = piece.laidOn ? 1 : PINNED_SHRINK;
    const small = place(
      piece.points.map(([x, y]): Point => [x - cx, y - cy]),
      { x: cx, y: cy, size, turn: spread(chanceOf(`${name}/${i}/lean`), 0.02) },
    );
    return patch(`${name}/${i}`, onCloth(small), piece.ink, {
      shadow: unit > 60 ? 2.6 : 1.2,
      seam: 0,
      scissors: { miss: unit * 0.003, snip: unit * 0.3 },
      grain: null,
    });
  });
  const basting: Mark = {
    kind: 'stitches',
    stitches: runningStitches(inset(corners, Math.max(4, unit * 0.05)), name, {
      on: Math.max(6, unit * 0.09),
      off: Math.max(3, unit * 0.045),
      uneven: unit * 0.004,
    }),
    ink: 'madder',
    width: Math.max(1.4, unit * 0.014),
  };
  return [ground, ...cut, basting, ...pins(name, corners, unit)];
}

/** Two pins with weld heads across opposite corners. */
function pins(name: string, corners: Corners, unit: number): Mark[] {
  const [from, , opposite] = corners;
  return [0.13, 0.87].flatMap((share, i): Mark[] => {
    const head = between(from, opposite, share);
    const lean = i === 0 ? 0.6 : -2.5;
    const point: Point = [head[0] + Math.cos(lean) * unit * 0.15, head[1] + Math.sin(lean) * unit * 0.15];
    return [
      { kind: 'stitches', stitches: [[...head, ...point]], ink: 'ink', width: Math.max(1, unit * 0.01) },
      patch(`${name}/pin${i}`, ring(head[0], head[1], Math.max(2.2, unit * 0.024), 8), 'weld', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
    ];
  });
}

/** Every edge of every piece once, chalked on plain cloth. */
function chalked(
  name: string,
  pieces: readonly BlockPiece[],
  corners: Corners,
  onCloth: OnCloth,
  unit: number,
): Mark[] {
  const drawn = new Set<string>();
  const stitches: Stitch[] = [];
  const dash = {
    on: Math.max(2.4, unit * 0.03),
    off: Math.max(1.6, unit * 0.016),
    closed: false,
    uneven: unit * 0.0015,
  };
  for (const piece of pieces) {
    piece.points.forEach((from, i) => {
      const to = piece.points[(i + 1) % piece.points.length]!;
      const key = [from, to]
        .map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`)
        .sort()
        .join(' ');
      if (drawn.has(key) || distance(from, to) < 0.01 || onRim(from, to)) return;
      drawn.add(key);
      stitches.push(...runningStitches(onCloth([from, to]), `${name}/${key}`, dash));
    });
  }
  stitches.push(...runningStitches(inset(corners, 1), `${name}/rim`, { ...dash, closed: true }));
  return [
    patch(`${name}/ground`, corners, 'muslin', { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' }),
    { kind: 'stitches', stitches, ink: 'chalk', width: Math.max(0.8, Math.min(1.3, unit * 0.009)), flat: true },
  ];
}

const onRim = (from: Point, to: Point): boolean =>
  ([0, 1] as const).some((axis) =>
    [0, 1].some((edge) => Math.abs(from[axis] - edge) < 0.005 && Math.abs(to[axis] - edge) < 0.005),
  );

type Corners = readonly [Point, Point, Point, Point];

/** The box with each corner moved by up to 1.6 % of its side, never outwards. */
function offSquare({ x, y, width, height }: Box, name: string): Corners {
  const chance = chanceOf(`${name}/corners`);
  const off = () => chance() * 0.016;
  return [
    [x + off() * width, y + off() * height],
    [x + width - off() * width, y + off() * height],
    [x + width - off() * width, y + height - off() * height],
    [x + off() * width, y + height - off() * height],
  ];
}

/** Bilinear: a point of the unit square on four corners. */
function onCorners([u, v]: Point, [a, b, c, d]: Corners): Point {
  return between(between(a, b, u), between(d, c, u), v);
}
