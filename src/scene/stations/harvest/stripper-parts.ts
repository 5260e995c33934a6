import { openBollMarks } from '../../cloth/boll.ts';
import { patch } from '../../cloth/patch.ts';
import { arc, place, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';

const BATS = 3;

/**
 * A stripping roll from its end: rubber bats and bristle brushes by turns.
 * @param radius from the middle to the tips of the brushes, px
 */
export function strippingRoll(name: string, x: number, y: number, radius: number): Mark[] {
  const marks: Mark[] = [];
  const bristles: Stitch[] = [];
  for (let i = 0; i < BATS * 2; i++) {
    const turn = (i / (BATS * 2)) * 2 * Math.PI;
    const at = (points: readonly Point[]) => place(points, { x, y, size: radius, turn });
    if (i % 2) {
      for (let k = -4; k <= 4; k++) {
        const [from, to] = at([
          [k * 0.032, -0.56],
          [k * 0.058, -1 + Math.abs(k) * 0.012],
        ]) as [Point, Point];
        bristles.push([...from, ...to]);
      }
      continue;
    }
    marks.push(
      patch(
        `${name}/bat${i}`,
        at([
          [-0.15, -0.5],
          [-0.11, -0.95],
          [0.11, -0.95],
          [0.15, -0.5],
        ]),
        'iron',
        { shadow: 2.6, seam: 0, grain: null, scissors: { miss: radius * 0.01 } },
      ),
    );
  }
  marks.push({ kind: 'stitches', stitches: bristles, ink: 'walnut', width: Math.max(1.3, radius * 0.028) });
  for (let i = 1; i < BATS * 2; i += 2)
    marks.push(
      patch(
        `${name}/holder${i}`,
        place(
          [
            [-0.2, -0.48],
            [-0.17, -0.64],
            [0.17, -0.64],
            [0.2, -0.48],
          ],
          { x, y, size: radius, turn: (i / (BATS * 2)) * 2 * Math.PI },
        ),
        'walnutPale',
        { shadow: 1.2, seam: 0, grain: null, scissors: { miss: radius * 0.008 } },
      ),
    );
  marks.push(
    patch(`${name}/core`, ring(x, y, radius * 0.56, 18), 'madder', {
      shadow: 4,
      seam: radius > 34 ? radius * 0.1 : 0,
      scissors: { miss: radius * 0.008, snip: 60 },
    }),
    patch(`${name}/shaft`, ring(x, y, radius * 0.2, 8), 'indigo', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.6 },
    }),
  );
  return marks;
}

/** The saw of the field cleaner: raked teeth, a drum, its shaft. */
export function cleanerSaw(name: string, x: number, y: number, radius: number): Mark[] {
  const teeth = 26;
  const outline = Array.from({ length: teeth }, (_, i): Point[] => {
    const at = (share: number, reach: number): Point => {
      const angle = ((i + share) / teeth) * 2 * Math.PI;
      return [x + Math.cos(angle) * reach * radius, y + Math.sin(angle) * reach * radius];
    };
    return [at(0, 1), at(0.42, 0.88)];
  }).flat();
  return [
    patch(name, outline, 'indigo', { shadow: 4, seam: 0, scissors: { miss: 0.5, snip: radius } }),
    {
      kind: 'stitches',
      stitches: runningStitches(ring(x, y, radius * 0.68, 26), `${name}/ring`, { on: 7, off: 5 }),
      ink: 'thread',
      width: 1.7,
    },
    patch(`${name}/drum`, ring(x, y, radius * 0.46, 13), 'mid', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.6 },
    }),
    patch(`${name}/shaft`, ring(x, y, radius * 0.16, 7), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.4 },
    }),
  ];
}

/** Grid bars under a saw: what is heavy is flung out between them. */
export const cleanerBars = (name: string, x: number, y: number, radius: number): Mark[] =>
  arc(x, y, radius * 1.16, Math.PI * 0.08, Math.PI * 0.92, 6).map(([bx, by], i) =>
    patch(`${name}/${i}`, ring(bx, by, radius * 0.09, 4, i * 0.4), 'weld', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.4 },
    }),
  );

/** A stalk that stands with its open bolls between the rolls. */
export function rowPlant(name: string, x: number, foot: number, top: number, boll: number): Mark[] {
  const tall = foot - top;
  const stem: Point[] = [
    [x, foot],
    [x - 3, foot - tall * 0.4],
    [x + 3, foot - tall * 0.7],
    [x, top],
  ];
  const seats: readonly (readonly [side: number, up: number])[] = [
    [-1.5, 0.62],
    [1.5, 0.72],
    [-1.25, 0.86],
    [1.1, 0.96],
  ];
  return [
    ...seats.map(([side, up], i) =>
      patch(
        `${name}/branch${i}`,
        taperedStrip(
          [
            [x, foot - tall * (up - 0.1)],
            [x + side * boll * 0.6, foot - tall * (up - 0.03)],
            [x + side * boll, foot - tall * up],
          ],
          boll * 0.2,
          boll * 0.13,
        ),
        'walnut',
        { shadow: 1.2, seam: 0, grain: null, scissors: 'asDrawn' },
      ),
    ),
    patch(`${name}/stem`, taperedStrip(stem, boll * 0.34, boll * 0.2), 'walnut', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    ...seats.flatMap(([side, up], i) =>
      openBollMarks(
        `${name}/boll${i}`,
        { x: x + side * boll, y: foot - tall * up, size: boll * 0.8, wide: 1, turn: i * 0.7 },
        i % 2 ? 4 : 5,
      ),
    ),
  ];
}
