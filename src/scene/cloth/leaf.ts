import type { InkName } from '../../style/inks.ts';
import type { DisplayList, Point } from '../display-list.ts';
import { patch } from './patch.ts';
import { leafShape, leafVeins, youngLeafShape } from './piece-shapes.ts';
import { type Placing, place } from './point.ts';
import { runningStitches } from './running-stitch.ts';

/** Below this radius veins are left out, px. */
const ROOM_FOR_VEINS_PX = 8;

/**
 * A cotton leaf on the plant. It hangs from the notch at its heart-shaped base, which is where x and y put it.
 * @param young a young leaf has three plain lobes
 */
export function leafMarks(name: string, placing: Required<Placing>, ink: InkName, young = false): DisplayList {
  const base: Point = young ? [0, 0.5] : [0, 0.42];
  const fromNotch = (points: readonly Point[]) =>
    place(
      points.map(([x, y]): Point => [x - base[0], y - base[1]]),
      placing,
    );
  const size = placing.size;
  const cut = patch(name, fromNotch(young ? youngLeafShape : leafShape), ink, {
    shadow: size > 14 ? 2.6 : 1.2,
    seam: 0,
    scissors: { miss: size * 0.035, snip: size * 0.6, bow: 0.03 },
    grain: null,
  });
  if (size < ROOM_FOR_VEINS_PX) return [cut];
  const [notch, ...ends] = fromNotch([
    base,
    ...leafVeins.slice(0, young ? 3 : 5).map(([x, y]): Point => [x * 0.86, y * 0.86]),
  ]);
  const stitchery = {
    on: Math.max(2.6, size * 0.16),
    off: Math.max(2, size * 0.12),
    closed: false,
    uneven: size * 0.01,
  };
  return [
    cut,
    {
      kind: 'stitches',
      stitches: ends.flatMap((end, i) => runningStitches([notch!, end], `${name}/vein${i}`, stitchery)),
      ink: 'youngGreen',
      width: Math.max(0.9, Math.min(1.5, size * 0.05)),
    },
  ];
}
