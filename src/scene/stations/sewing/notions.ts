import { patch } from '../../cloth/patch.ts';
import { arc, place, rectangle } from '../../cloth/point.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';

/** What lies on a sewing table beside the cloth. */

/** A spool of thread, standing. @param size half its height, px */
export function spool(name: string, x: number, y: number, size: number): Mark[] {
  const at = (points: readonly Point[]) => place(points, { x, y, size });
  const plain = { seam: 0, grain: null, scissors: { miss: 0.8, snip: 60 } } as const;
  const winds: Stitch[] = Array.from({ length: 8 }, (_, i) => {
    const [from, to] = at([
      [-0.44, -0.5 + i * 0.15],
      [0.44, -0.56 + i * 0.15],
    ]);
    return [...from!, ...to!];
  });
  return [
    patch(
      `${name}/foot`,
      at([
        [-0.62, 0.72],
        [0.62, 0.72],
        [0.54, 1],
        [-0.54, 1],
      ]),
      'walnutPale',
      { shadow: 2.6, ...plain },
    ),
    patch(
      `${name}/thread`,
      at([
        [-0.46, -0.7],
        [0.46, -0.7],
        [0.48, 0.74],
        [-0.48, 0.74],
      ]),
      'madder',
      { shadow: 2.6, ...plain },
    ),
    { kind: 'stitches', stitches: winds, ink: 'blush', width: Math.max(1.1, size * 0.05), flat: true },
    patch(
      `${name}/head`,
      at([
        [-0.54, -1],
        [0.54, -1],
        [0.62, -0.7],
        [-0.62, -0.7],
      ]),
      'walnutPale',
      { shadow: 2.6, ...plain },
    ),
  ];
}

/** A sewing machine needle: shank with its flat, blade, scarf and eye near the point. @param size its length, px */
export function machineNeedle(name: string, x: number, y: number, size: number, turn: number): Mark[] {
  const at = (points: readonly Point[]) => place(points, { x, y, size, turn });
  const [eyeTop, eyeFoot] = at([
    [0, 0.86],
    [0, 0.91],
  ]);
  return [
    patch(
      name,
      at([
        [-0.032, 0],
        [0.032, 0],
        [0.032, 0.32],
        [0.018, 0.37],
        [0.016, 0.8],
        [0.02, 0.9],
        [0, 1],
        [-0.02, 0.9],
        [-0.016, 0.37],
        [-0.05, 0.32],
        [-0.05, 0.02],
      ]),
      'fadedPale',
      { shadow: 2.6, seam: 0, grain: null, scissors: 'asDrawn' },
    ),
    {
      kind: 'stitches',
      stitches: [[...eyeTop!, ...eyeFoot!]],
      ink: 'ink',
      width: Math.max(1.2, size * 0.014),
      flat: true,
    },
  ];
}

/** A hand needle with its eye. @param from the eye, @param to the point */
export function handNeedle(name: string, from: Point, to: Point): Mark[] {
  const eye: Point = [from[0] + (to[0] - from[0]) * 0.04, from[1] + (to[1] - from[1]) * 0.04];
  const past: Point = [from[0] + (to[0] - from[0]) * 0.12, from[1] + (to[1] - from[1]) * 0.12];
  return [
    patch(name, taperedStrip([from, to], 5.4, 1), 'faded', { shadow: 4, seam: 0, grain: null, scissors: 'asDrawn' }),
    { kind: 'stitches', stitches: [[...eye, ...past]], ink: 'ink', width: 1.5, flat: true },
  ];
}

/** Shears, blades up along a cut. @param x, y the pivot; @param size from the pivot to the tip, px; @param open half the angle between the blades, radians */
export function shears(name: string, x: number, y: number, size: number, open: number): Mark[] {
  const blade = (side: 1 | -1) =>
    place(
      [
        [side * 0.02, -1],
        [side * 0.1, -0.5],
        [side * 0.15, 0.05],
        [side * 0.06, 0.22],
        [side * -0.08, 0.05],
        [side * -0.02, -0.6],
      ],
      { x, y, size, turn: side * open },
    );
  const bow = (side: 1 | -1): Mark => {
    const [middle] = place([[side * -0.26, 0.62]], { x, y, size, turn: side * open });
    const ring = arc(
      middle![0],
      middle![1],
      size * 0.2,
      Math.PI * (side > 0 ? -0.3 : -0.7),
      Math.PI * (side > 0 ? 1.72 : 1.32),
      14,
    );
    return patch(`${name}/bow${side}`, taperedStrip(ring, size * 0.1, size * 0.1), 'weld', {
      shadow: 4,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    });
  };
  const shank = (side: 1 | -1): Mark => {
    const path = place(
      [
        [side * 0.04, 0.02],
        [side * -0.12, 0.42],
      ],
      { x, y, size, turn: side * open },
    );
    return patch(`${name}/shank${side}`, taperedStrip(path, size * 0.14, size * 0.1), 'weld', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    });
  };
  const plain = { shadow: 4, seam: 0, grain: null, scissors: { miss: 0.5, snip: size } } as const;
  return [
    bow(1),
    shank(1),
    patch(`${name}/blade1`, blade(1), 'fadedThin', plain),
    bow(-1),
    shank(-1),
    patch(`${name}/blade-1`, blade(-1), 'fadedPale', plain),
    patch(`${name}/screw`, rectangle(x - size * 0.04, y - size * 0.04, size * 0.08, size * 0.08), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  ];
}
