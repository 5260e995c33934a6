import { patch } from '../../cloth/patch.ts';
import type { Box } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { ModuleInput } from './module-input.ts';
import { tears } from './round-module.ts';

/** A long module: tamped in layers, crowned so that it sheds the rain, under a tarp tied down; hollow on top where the cover is poor. */
export function longModule({ x, y, width: w, height: h }: Box, cover: ModuleInput['cover']): Mark[] {
  const dip = cover === 'poor' ? 0.2 : 0;
  const lean = h * 0.16;
  const crown = (share: number): Point => {
    const bow = Math.sin(share * Math.PI) * h * 0.12;
    const hollow = dip * h * Math.exp(-(((share - 0.56) / 0.12) ** 2));
    return [x + lean + (w - 2 * lean) * share, y + h * 0.14 - bow + hollow];
  };
  const top = Array.from({ length: 13 }, (_, i) => crown(i / 12));
  const layers = [0.42, 0.6, 0.78].map(
    (share, i): Mark => ({
      kind: 'stitches',
      stitches: runningStitches(
        [
          [x + lean * (1 - share) + 12, y + h * share],
          [x + w - lean * (1 - share) - 12, y + h * share + 2],
        ],
        `module/layer${i}`,
        { on: 15, off: 10, closed: false },
      ),
      ink: 'fadedPale',
      width: 2,
      flat: true,
    }),
  );
  const marks: Mark[] = [
    patch('module/body', [...top, [x + w, y + h], [x, y + h]], 'lint', {
      shadow: 6,
      seam: 8,
      thread: 'mid',
      scissors: { miss: 1.4, snip: 70 },
    }),
    ...layers,
  ];
  if (cover === 'none') return marks;
  const lift = h * 0.035;
  const hem = (share: number): Point => [
    x + lean * 0.62 + (w - lean * 1.24) * share,
    y + h * 0.42 + Math.sin(share * 17) * h * 0.012,
  ];
  const tarp: Point[] = [
    ...top.map(([px, py]): Point => [px, py - lift]),
    ...Array.from({ length: 9 }, (_, i) => hem(1 - i / 8)),
  ];
  marks.push(patch('module/tarp', tarp, 'weld', { shadow: 4, seam: 7, scissors: { miss: 1.4, snip: 70 } }));
  for (const share of [0.14, 0.38, 0.62, 0.86]) {
    const [rx, ry] = crown(share);
    marks.push(
      patch(
        `module/rope${share}`,
        taperedStrip(
          [
            [rx, ry - lift - 2],
            [rx + (share - 0.5) * lean, y + h * 0.95],
          ],
          5,
          5,
        ),
        'madder',
        { shadow: 1.2, seam: 0, grain: null, scissors: 'asDrawn' },
      ),
    );
  }
  if (cover === 'poor') {
    const [hx, hy] = crown(0.56);
    marks.push(...tears(hx, hy + h * 0.06, h * 0.34));
  }
  return marks;
}
