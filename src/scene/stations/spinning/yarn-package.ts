import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';

const plain = { seam: 0, grain: null, scissors: 'asDrawn' } as const;

/** A ring tube on its spindle, empty: what the cop is wound on. */
export function ringTube(box: Box): Mark[] {
  const { x, y, width, height } = box;
  const middle = x + width / 2;
  const tube = width * 0.2;
  const railY = y + height * 0.93;
  return [
    patch('spinning/spindle', rectangle(middle - 2.5, y, 5, height), 'iron', { shadow: 2.6, ...plain }),
    patch(
      'spinning/tube',
      [
        [middle - tube * 0.36, y + height * 0.08],
        [middle + tube * 0.36, y + height * 0.08],
        [middle + tube * 0.5, railY],
        [middle - tube * 0.5, railY],
      ],
      'weld',
      { shadow: 2.6, ...plain },
    ),
    patch('spinning/rail', rectangle(x - 4, railY, width + 8, height * 0.05), 'walnutPale', { shadow: 2.6, ...plain }),
  ];
}

/** The cop as it stands: yarn is wound from the foot up, so that its height is its mass, with a cone on top. */
export function ringCop(box: Box, progress: number): Mark[] {
  if (progress <= 0) return [];
  const { x, y, width, height } = box;
  const middle = x + width / 2;
  const half = width * 0.4;
  const foot = y + height * 0.92;
  const full = height * 0.74;
  const cone = height * 0.13;
  const top = foot - full * progress;
  const neck = width * 0.09;
  const shoulder = Math.min(foot - 4, top + Math.min(cone, full * progress * 0.8));
  const outline: Point[] = [
    [middle - neck, top],
    [middle + neck, top],
    [middle + half, shoulder],
    [middle + half * 0.98, foot - half * 0.3],
    [middle + half * 0.74, foot],
    [middle - half * 0.74, foot],
    [middle - half * 0.98, foot - half * 0.3],
    [middle - half, shoulder],
  ];
  const winds: Stitch[] = [];
  for (let at = foot - 5; at > shoulder; at -= 5.5)
    winds.push([middle - half * 0.94, at, middle + half * 0.94, at - 3]);
  for (let at = shoulder - 3; at > top + 3; at -= 5) {
    const reach = neck + ((half - neck) * (at - top)) / Math.max(1, shoulder - top);
    winds.push([middle - reach * 0.9, at, middle + reach * 0.9, at - 2.4]);
  }
  return [
    patch('spinning/cop', outline, 'lint', { shadow: 4, ...plain }),
    { kind: 'stitches', stitches: winds, ink: 'mid', width: 1.2, flat: true },
  ];
}

/** Where the yarn runs on to the package as it stands. */
export function windingPoint(box: Box, system: 'ring' | 'rotor', progress: number): Point {
  const { x, y, width, height } = box;
  if (system === 'rotor') return [x + width / 2, y + height / 2 - cheeseRadius(box, progress)];
  const foot = y + height * 0.92;
  return [x + width * 0.5 + width * 0.3, foot - height * 0.74 * progress + height * 0.07];
}

/** Radius of a cross-wound package whose area is the yarn wound so far. */
const cheeseRadius = ({ width, height }: Box, progress: number): number => {
  const most = Math.min(width, height) * 0.48;
  const core = most * 0.26;
  return Math.sqrt(core * core + (most * most - core * core) * progress);
};

/** A cross-wound package from its end: its face grows with the yarn on it. */
export function rotorCheese(box: Box, progress: number): Mark[] {
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  const radius = cheeseRadius(box, progress);
  const core = cheeseRadius(box, 0);
  const ring = (reach: number, sides = 26): Point[] =>
    Array.from({ length: sides }, (_, i) => [
      x + reach * Math.cos((i / sides) * 2 * Math.PI),
      y + reach * Math.sin((i / sides) * 2 * Math.PI),
    ]);
  const winds: Stitch[] = [];
  for (let reach = core + 4; reach < radius - 2; reach += 6) {
    const points = ring(reach, 30);
    points.forEach((from, i) => {
      if (i % 3 === 2) return;
      winds.push([...from, ...points[(i + 1) % points.length]!]);
    });
  }
  return [
    patch('spinning/cheese', ring(radius), 'lint', { shadow: 4, ...plain }),
    { kind: 'stitches', stitches: winds, ink: 'mid', width: 1.1, flat: true },
    patch('spinning/core', ring(core * 0.92, 14), 'weld', { shadow: 1.2, ...plain }),
    patch('spinning/hole', ring(core * 0.5, 12), 'iron', { shadow: 0, ...plain }),
  ];
}
