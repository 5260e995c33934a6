import { patch } from '../../cloth/patch.ts';
import { arc, place, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { ModuleInput } from './module-input.ts';

/**
 * A round module: its wound end, and its side under the wrap, drawn slanting away to the right.
 * @param radius of the end, px; @param depth how far its side reaches to the right, px
 */
export function roundModule(x: number, y: number, radius: number, depth: number, cover: ModuleInput['cover']): Mark[] {
  const bare = cover === 'none';
  const side: Point[] = [
    [x, y - radius * 0.985],
    [x + depth * 0.86, y - radius * 0.9],
    [x + depth + radius * 0.18, y - radius * 0.5],
    [x + depth + radius * 0.26, y + radius * 0.1],
    [x + depth + radius * 0.16, y + radius * 0.6],
    [x + depth * 0.86, y + radius * 0.92],
    [x, y + radius * 0.985],
  ];
  const winding = arc(x, y, 1, 0, 6 * 2 * Math.PI, 170).map(([px, py], i): Point => {
    const reach = radius * 0.78 * (1 - i / 178);
    return [x + (px - x) * reach, y + (py - y) * reach];
  });
  const marks: Mark[] = [
    patch('module/side', side, bare ? 'lint' : 'weld', {
      shadow: 6,
      seam: 8,
      ...(bare ? { thread: 'faded' } : {}),
      scissors: { miss: 1.6, snip: 80 },
    }),
  ];
  if (!bare)
    for (const share of [0.36, 0.72])
      marks.push({
        kind: 'stitches',
        stitches: runningStitches(
          [
            [x + depth * share + radius * 0.2, y - radius * 0.9],
            [x + depth * share + radius * 0.42, y - radius * 0.1],
            [x + depth * share + radius * 0.26, y + radius * 0.88],
          ],
          `module/layer${share}`,
          { closed: false, on: 10, off: 8 },
        ),
        ink: 'walnut',
        width: 1.7,
      });
  marks.push(
    patch('module/wrap', ring(x, y, radius, 26, 0.1), bare ? 'fadedThin' : 'weld', {
      shadow: 4,
      seam: radius * 0.055,
      scissors: { miss: 1.4, snip: 80 },
    }),
    patch('module/end', ring(x, y, radius * 0.86, 24, 0.2), 'lint', {
      shadow: 2.6,
      seam: 0,
      scissors: { miss: 1.4, snip: 80 },
    }),
    {
      kind: 'stitches',
      stitches: runningStitches(winding, 'module/winding', { on: 12, off: 8, closed: false }),
      ink: 'fadedPale',
      width: Math.max(1.5, radius * 0.016),
      flat: true,
    },
  );
  if (!bare) marks.push(...wrapTail(x, y, radius), ...outsideTag(x + depth * 0.62, y - radius * 0.44, radius));
  if (cover === 'poor') marks.push(...tears(x + depth * 0.62, y + radius * 0.16, radius * 0.5));
  return marks;
}

/** The loose end of the wrap. */
const wrapTail = (x: number, y: number, radius: number): Mark[] => [
  patch(
    'module/tail',
    place(
      [
        [0.5, -0.9],
        [0.86, -0.64],
        [1, -0.14],
        [0.84, -0.1],
        [0.68, -0.5],
      ],
      { x, y, size: radius },
    ),
    'weldPale',
    { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 1 } },
  ),
];

/** The tag outside the wrap by which the gin knows the module: blank here, since this farm is invented. */
const outsideTag = (x: number, y: number, radius: number): Mark[] => [
  patch(
    'module/tag',
    place(
      [
        [-0.17, -0.1],
        [0.17, -0.1],
        [0.18, 0.1],
        [-0.17, 0.1],
      ],
      { x, y, size: radius, turn: 0.06 },
    ),
    'muslin',
    { shadow: 1.2, seam: 3.5, thread: 'madder', stitchery: { on: 4, off: 3 }, grain: null, scissors: { miss: 0.6 } },
  ),
];

/** Holes torn in a cover: the cotton shows, and the wet stain round it. */
export function tears(x: number, y: number, size: number): Mark[] {
  const hole = (dx: number, dy: number, big: number, turn: number, i: number): Mark[] => {
    const shape: readonly Point[] = [
      [-0.9, -0.1],
      [-0.3, -0.42],
      [0.1, -0.2],
      [0.8, -0.36],
      [0.5, 0.06],
      [0.9, 0.3],
      [0.2, 0.26],
      [-0.2, 0.5],
      [-0.46, 0.12],
    ];
    const at = { x: x + dx * size, y: y + dy * size, turn };
    return [
      patch(`module/stain${i}`, place(shape, { ...at, size: size * big * 1.28 }), 'mid', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: { miss: 1 },
      }),
      patch(`module/hole${i}`, place(shape, { ...at, size: size * big }), 'lint', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: { miss: 1 },
      }),
    ];
  };
  return [...hole(0, 0, 0.56, 0.2, 0), ...hole(0.5, -0.72, 0.34, 1, 1), ...hole(-0.42, 0.66, 0.3, -0.5, 2)];
}
