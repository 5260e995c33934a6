import type { InkName } from '../../../style/inks.ts';
import { patch } from '../../cloth/patch.ts';
import { ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point, ShadowPx } from '../../display-list.ts';

/** A plate of cloth, off square, laid high. */
export function plate(name: string, points: readonly Point[], ink: InkName, shadow: ShadowPx = 4, seam = 7): Mark {
  return patch(name, points, ink, { shadow, seam, scissors: { miss: 1.6, snip: 70 } });
}

/** A disc of few sides, with a stitched ring when there is room. */
export function disc(name: string, x: number, y: number, radius: number, ink: InkName, shadow: ShadowPx = 2.6): Mark[] {
  const sides = radius > 60 ? 18 : radius > 24 ? 13 : 9;
  return [
    patch(name, ring(x, y, radius, sides, 0.17), ink, {
      shadow,
      seam: radius > 26 ? Math.max(5, radius * 0.1) : 0,
      scissors: { miss: Math.min(1.4, radius * 0.03), snip: 60 },
      grain: radius > 40 ? 0.6 : null,
    }),
  ];
}

/** A row of stitches round a centre. */
export const stitchedRing = (name: string, x: number, y: number, radius: number, ink: InkName = 'thread'): Mark => ({
  kind: 'stitches',
  stitches: runningStitches(ring(x, y, radius, 36), name, { on: 8, off: 6 }),
  ink,
  width: 1.8,
});

/** A saw: straight-cut teeth, each raked the way it pulls. */
export function sawDisc(
  name: string,
  x: number,
  y: number,
  radius: number,
  teeth: number,
  ink: InkName,
  shadow: ShadowPx = 4,
): Mark {
  const outline: Point[] = [];
  for (let i = 0; i < teeth; i++) {
    const tip = (i / teeth) * 2 * Math.PI;
    const root = tip + (0.42 / teeth) * 2 * Math.PI;
    const inner = radius * (1 - Math.min(0.2, 2.4 / teeth));
    outline.push(
      [x + radius * Math.cos(tip), y + radius * Math.sin(tip)],
      [x + inner * Math.cos(root), y + inner * Math.sin(root)],
    );
  }
  return patch(name, outline, ink, {
    shadow,
    seam: 0,
    grain: radius > 40 ? 0.8 : null,
    scissors: { miss: Math.min(0.8, radius * 0.012), snip: radius },
  });
}

/** A cylinder set with pins all round. */
export function spikedCylinder(name: string, x: number, y: number, radius: number, ink: InkName = 'indigo'): Mark[] {
  const pins = Math.max(8, Math.round(radius / 3));
  const core = radius * 0.7;
  return [
    {
      kind: 'stitches',
      stitches: Array.from({ length: pins }, (_, i) => {
        const angle = (i / pins) * 2 * Math.PI;
        return [
          x + core * 0.8 * Math.cos(angle),
          y + core * 0.8 * Math.sin(angle),
          x + radius * Math.cos(angle),
          y + radius * Math.sin(angle),
        ] as const;
      }),
      ink: 'ink',
      width: Math.max(1.6, radius * 0.1),
    },
    ...disc(name, x, y, core, ink),
    ...disc(`${name}/hub`, x, y, Math.max(2.4, radius * 0.18), 'weld', 0),
  ];
}
