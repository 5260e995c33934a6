import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { type Box, rectangle, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { ModuleInput } from './module-input.ts';
import { tears } from './round-module.ts';

/** A farm wagon with high sideboards, heaped with seed cotton; its tongue lies to the left. The box holds bed and wheels. */
export function cottonWagon({ x, y, width: w, height: h }: Box, cover: ModuleInput['cover']): Mark[] {
  const bed = { x: x + w * 0.04, y: y + h * 0.2, width: w * 0.92, height: h * 0.5 };
  const wheel = h * 0.22;
  const marks: Mark[] = [
    patch(
      'module/tongue',
      taperedStrip(
        [
          [bed.x + 10, y + h * 0.76],
          [x - w * 0.2, y + h * 0.92],
        ],
        9,
        7,
      ),
      'walnut',
      { shadow: 2.6, seam: 0, grain: null, scissors: 'asDrawn' },
    ),
  ];
  const heap = 9;
  for (let i = 0; i < heap; i++) {
    const share = (i + 0.5) / heap;
    marks.push(
      ...pieceMarks('lint', `module/heap${i}`, {
        x: bed.x + bed.width * (0.04 + 0.92 * share),
        y: bed.y + h * 0.03 - Math.sin(share * Math.PI) * h * 0.1,
        size: h * 0.13,
      }),
    );
  }
  if (cover !== 'none') {
    const tarp: Point[] = Array.from({ length: 9 }, (_, i) => [
      bed.x + bed.width * (i / 8),
      bed.y - h * 0.03 - Math.sin((i / 8) * Math.PI) * h * 0.17,
    ]);
    marks.push(
      patch(
        'module/tarp',
        [...tarp, [bed.x + bed.width + 4, bed.y + h * 0.1], [bed.x - 4, bed.y + h * 0.1]],
        'weldPale',
        { shadow: 2.6, seam: 5, scissors: { miss: 1.4, snip: 60 } },
      ),
    );
    if (cover === 'poor') marks.push(...tears(bed.x + bed.width * 0.5, bed.y - h * 0.06, h * 0.22));
  }
  marks.push(
    patch(
      'module/bed',
      [
        [bed.x - w * 0.03, bed.y],
        [bed.x + bed.width + w * 0.03, bed.y - 3],
        [bed.x + bed.width, bed.y + bed.height],
        [bed.x, bed.y + bed.height + 2],
      ],
      'madder',
      { shadow: 6, seam: 8, scissors: { miss: 1.6, snip: 80 } },
    ),
  );
  for (const share of [0.26, 0.5, 0.74])
    marks.push({
      kind: 'stitches',
      stitches: runningStitches(
        [
          [bed.x + 8, bed.y + bed.height * share],
          [bed.x + bed.width - 8, bed.y + bed.height * share - 2],
        ],
        `module/board${share}`,
        { closed: false, on: 13, off: 8 },
      ),
      ink: 'thread',
      width: 1.8,
    });
  for (const share of [0.12, 0.88])
    marks.push(
      patch(
        `module/stake${share}`,
        rectangle(bed.x + bed.width * share - 5, bed.y - 8, 10, bed.height + 14),
        'walnut',
        { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 0.8 } },
      ),
    );
  for (const [share, big] of [
    [0.2, 0.92],
    [0.8, 1.08],
  ] as const) {
    const r = wheel * big;
    const [cx, cy] = [bed.x + bed.width * share, y + h - r];
    marks.push(
      patch(`module/rim${share}`, ring(cx, cy, r, 20), 'walnut', { shadow: 4, seam: 0, scissors: { miss: 0.7 } }),
      patch(`module/inner${share}`, ring(cx, cy, r * 0.8, 18), 'calico', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: { miss: 0.6 },
      }),
      {
        kind: 'stitches',
        stitches: ring(cx, cy, r * 0.82, 12).map(([px, py]) => [cx, cy, px, py] as const),
        ink: 'walnut',
        width: Math.max(2.4, r * 0.07),
      },
      patch(`module/nave${share}`, ring(cx, cy, r * 0.2, 9), 'weld', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.4 },
      }),
    );
  }
  return marks;
}
