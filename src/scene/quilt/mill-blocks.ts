import type { InkName } from '../../style/inks.ts';
import { between, signedArea } from '../cloth/point.ts';
import { tuftOutline } from '../cloth/tuft.ts';
import type { Point } from '../display-list.ts';
import { type BlockPiece, laidOn, pieced, strip } from './block-piece.ts';

/** Barber poles: a wide sliver hardly turned, a roving, a thin yarn turned hard. Drawn out, then twisted. */
export function spinningBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('indigo', 0, 0, 1, 1)];
  const pole = (x: number, width: number, turns: number, inks: readonly InkName[]) => {
    const height = 1 / turns;
    const rise = Math.min(height, width * 0.9);
    for (let i = -2; i <= turns; i++) {
      const y = i * height;
      const points = heldTo([
        [x, y + rise],
        [x + width, y],
        [x + width, y + height],
        [x, y + height + rise],
      ]);
      if (points.length > 2 && Math.abs(signedArea(points)) > 1e-3)
        pieces.push(pieced(inks[(i + 2) % inks.length]!, ...points));
    }
  };
  pole(0.07, 0.36, 3, ['lint', 'calico', 'muslin']);
  pole(0.51, 0.2, 6, ['lint', 'faded']);
  pole(0.79, 0.11, 12, ['lint', 'madder']);
  return pieces;
}

/** Cuts a polygon off at the top and the bottom of the block. */
function heldTo(points: readonly Point[]): Point[] {
  let kept = [...points];
  for (const [edge, sign] of [
    [0, 1],
    [1, -1],
  ] as const) {
    kept = kept.flatMap((to, i): Point[] => {
      const from = kept[(i - 1 + kept.length) % kept.length]!;
      const inside = (point: Point) => (point[1] - edge) * sign >= 0;
      const crossing = between(from, to, (edge - from[1]) / (to[1] - from[1] || 1));
      if (inside(to)) return inside(from) ? [to] : [crossing, to];
      return inside(from) ? [crossing] : [];
    });
  }
  return kept;
}

/** A basket weave half made: the warp waits, the shed is open, and the shuttle is in it. */
export function weavingBlock(): BlockPiece[] {
  const pieces: BlockPiece[] = [strip('cotton', 0, 0, 1, 1)];
  const ends = 6;
  const endWidth = 0.1;
  const pitch = 1 / ends;
  const endX = (i: number) => i * pitch + (pitch - endWidth) / 2;
  const endInk = (i: number): InkName => (i % 2 ? 'mid' : 'indigo');
  for (let i = 0; i < ends; i++) pieces.push(strip(endInk(i), endX(i), 0, endWidth, 1));
  for (let row = 0; row < 4; row++) {
    const y = 0.86 - row * 0.155;
    pieces.push(laidOn('madder', strip('madder', 0, y, 1, 0.11).points));
    for (let i = 0; i < ends; i++)
      if ((i + row) % 2) pieces.push(laidOn(endInk(i), strip('mid', endX(i), y - 0.02, endWidth, 0.15).points));
  }
  pieces.push(
    laidOn('weld', [
      [0.1, 0.21],
      [0.26, 0.12],
      [0.74, 0.11],
      [0.92, 0.19],
      [0.74, 0.28],
      [0.26, 0.29],
    ]),
    laidOn('madder', [
      [0.36, 0.165],
      [0.64, 0.16],
      [0.64, 0.235],
      [0.36, 0.24],
    ]),
  );
  return pieces;
}

/** A variable star about one white patch: the patch that one boll makes, with the season's dyes around it. */
export function sewingBlock(): BlockPiece[] {
  const third = 1 / 3;
  const pieces: BlockPiece[] = [];
  const corners: readonly (readonly [number, number, InkName])[] = [
    [0, 0, 'walnut'],
    [2 * third, 0, 'bollGreen'],
    [0, 2 * third, 'bollGreen'],
    [2 * third, 2 * third, 'walnut'],
  ];
  for (const [x, y, ink] of corners) pieces.push(strip(ink, x, y, third, third));
  const quarters = (x: number, y: number, inks: readonly [InkName, InkName, InkName, InkName]) => {
    const middle: [number, number] = [x + third / 2, y + third / 2];
    const [a, b, c, d]: [number, number][] = [
      [x, y],
      [x + third, y],
      [x + third, y + third],
      [x, y + third],
    ] as [[number, number], [number, number], [number, number], [number, number]];
    pieces.push(
      pieced(inks[0], a!, b!, middle),
      pieced(inks[1], b!, c!, middle),
      pieced(inks[2], c!, d!, middle),
      pieced(inks[3], d!, a!, middle),
    );
  };
  quarters(third, 0, ['weld', 'madder', 'indigo', 'madder']);
  quarters(2 * third, third, ['madder', 'weld', 'madder', 'indigo']);
  quarters(third, 2 * third, ['indigo', 'madder', 'weld', 'madder']);
  quarters(0, third, ['madder', 'indigo', 'madder', 'weld']);
  pieces.push(strip('faded', third, third, third, third));
  pieces.push(laidOn('lint', tuftOutline(0.5, 0.5, 0.135, 'sewing-block')));
  return pieces;
}
