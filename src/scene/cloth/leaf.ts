import type { InkName } from '../../style/inks.ts';
import type { DisplayList, Mark, Point } from '../display-list.ts';
import { patch } from './patch.ts';
import { leafShape, leafVeins, youngLeafShape, youngLeafVeins } from './piece-shapes.ts';
import { type Placing, place } from './point.ts';
import { runningStitches } from './running-stitch.ts';

/** Below this radius veins are left out, px; from the other on, a leaf is pieced of two cloths along its middle vein. */
const ROOM_FOR_VEINS_PX = 8;
const ROOM_TO_PIECE_PX = 11;

/** The cloths of a leaf's two halves: the one in the shade, and the one that lies in the light. */
export type LeafCloth = readonly [shade: InkName, light: InkName];

/**
 * A cotton leaf on the plant. It hangs from the notch at its heart-shaped base, which is where x and y put it.
 * @param young a young leaf is a plain heart
 */
export function leafMarks(name: string, placing: Required<Placing>, [ink, lit]: LeafCloth, young = false): DisplayList {
  const base: Point = young ? [0, 0.5] : [0, 0.42];
  const fromNotch = (points: readonly Point[]) =>
    place(
      points.map(([x, y]): Point => [x - base[0], y - base[1]]),
      placing,
    );
  const size = placing.size;
  const shape = young ? youngLeafShape : leafShape;
  const cut = patch(name, fromNotch(shape), ink, {
    shadow: size > 14 ? 2.6 : 1.2,
    seam: 0,
    scissors: { miss: size * 0.03, snip: size * 0.6, bow: 0.03 },
    grain: null,
  });
  if (size < ROOM_FOR_VEINS_PX) return [cut];
  const marks: Mark[] = [cut];
  if (size >= ROOM_TO_PIECE_PX) {
    // Half of the outline, drawn in a little, so that the dark half shows as a hair all round.
    const tip = shape.length / 2;
    const half = shape.filter((_, i) => i === 0 || i >= tip).map(([x, y]): Point => [x * 0.93, y * 0.95 + 0.01]);
    marks.push(
      patch(`${name}/lit`, fromNotch(half), lit, {
        shadow: 0,
        seam: 0,
        scissors: 'asDrawn',
        grain: null,
      }),
    );
  }
  const [notch, ...ends] = fromNotch([base, ...(young ? youngLeafVeins : leafVeins)]);
  const stitchery = {
    on: Math.max(2.6, size * 0.16),
    off: Math.max(2, size * 0.12),
    closed: false,
    uneven: size * 0.01,
  };
  marks.push({
    kind: 'stitches',
    stitches: ends.flatMap((end, i) => runningStitches([notch!, end], `${name}/vein${i}`, stitchery)),
    ink: 'youngGreen',
    width: Math.max(0.9, Math.min(1.5, size * 0.045)),
    flat: true,
  });
  return marks;
}
