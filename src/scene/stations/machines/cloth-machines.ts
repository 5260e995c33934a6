import { partStitches } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { arc, place, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';
import { bar, type DrawMachine, disc, middleOf, plate, slab } from './machine-parts.ts';

/** A loom from above: warp from the left, two heddle frames that lift by turns, the shuttle, the reed, cloth to the right. */
export const loom: DrawMachine = (space) => {
  const { box, name } = space;
  const at = (share: number) => box.x + box.width * share;
  const top = box.y + box.height * 0.16;
  const tall = box.height * 0.68;
  const ends = Math.max(6, Math.round(tall / 13));
  const pitch = tall / ends;
  const fell = at(0.7);
  const warp: Stitch[] = Array.from({ length: ends }, (_, i) => [
    at(0.06),
    top + (i + 0.5) * pitch,
    fell,
    top + (i + 0.5) * pitch,
  ]);
  const eyes = (odd: number, x: number): Stitch[] =>
    Array.from({ length: ends }, (_, i) => i)
      .filter((i) => i % 2 === odd)
      .map((i) => [x, top + (i + 0.5) * pitch, x, top + (i + 0.5) * pitch]);
  const frame = box.width * 0.05;
  const shuttleShape: readonly Point[] = [
    [0, -1],
    [0.3, -0.5],
    [0.32, 0.5],
    [0, 1],
    [-0.32, 0.5],
    [-0.3, -0.5],
  ];
  const shuttle = { x: at(0.51), y: box.y + box.height * 0.36, size: box.height * 0.17 };
  const picks = weaveStitches(fell + 3, top, at(0.94) - fell - 3, tall, 6, ends * 2);
  return [
    slab(space),
    { kind: 'stitches', stitches: warp, ink: 'lint', width: Math.max(1.6, pitch * 0.3) },
    plate(`${name}/cloth`, rectangle(fell, top - 4, at(0.96) - fell, tall + 8), 'lint', 2.6, 0),
    { kind: 'stitches', stitches: picks, ink: 'mid', width: Math.max(1.1, pitch * 0.16), flat: true },
    bar(`${name}/heddle1`, at(0.2), box.y + box.height * 0.06, frame, box.height * 0.86, 'walnut', 4),
    bar(`${name}/heddle2`, at(0.33), box.y + box.height * 0.1, frame, box.height * 0.84, 'walnutWarm', 4),
    {
      kind: 'stitches',
      stitches: [...eyes(0, at(0.2) + frame / 2), ...eyes(1, at(0.33) + frame / 2)],
      ink: 'weld',
      width: Math.max(2.4, pitch * 0.42),
      flat: true,
    },
    patch(`${name}/shuttle`, place(shuttleShape, shuttle), 'weld', {
      shadow: 4,
      seam: 0,
      grain: null,
      scissors: { miss: 0.6 },
    }),
    patch(
      `${name}/pirn`,
      place(
        [
          [-0.1, -0.46],
          [0.1, -0.46],
          [0.12, 0.46],
          [-0.12, 0.46],
        ],
        shuttle,
      ),
      'madder',
      { shadow: 1.2, seam: 0, grain: null, scissors: { miss: 0.4 } },
    ),
    bar(`${name}/reed`, at(0.625), box.y + box.height * 0.08, frame * 0.9, box.height * 0.84, 'madder', 4),
  ];
};

/** Latch needles in a row, loop drawn through loop. */
export const knitting: DrawMachine = (space) => {
  const { box, name } = space;
  const wide = box.width * 0.8;
  const left = box.x + box.width * 0.1;
  const needles = Math.max(3, Math.round(wide / 26));
  const pitch = wide / (needles + 0.2);
  const marks: Mark[] = [slab(space)];
  const loops: Stitch[] = [];
  for (let row = 0; row < 4; row++)
    for (let i = 0; i < needles; i++) {
      const cx = left + pitch * (i + 0.6);
      const cy = box.y + box.height * (0.52 + row * 0.11);
      const path = arc(cx, cy, pitch * 0.3, Math.PI * 0.8, Math.PI * 2.2, 7);
      for (let k = 1; k < path.length; k++) loops.push([...path[k - 1]!, ...path[k]!]);
    }
  marks.push({ kind: 'stitches', stitches: loops, ink: 'lint', width: Math.max(2, pitch * 0.13) });
  for (let i = 0; i < needles; i++) {
    const cx = left + pitch * (i + 0.6);
    const top = box.y + box.height * (i % 2 ? 0.12 : 0.18);
    const hook: Point[] = [
      [cx, box.y + box.height * 0.58],
      [cx, top + 10],
      [cx + pitch * 0.14, top],
      [cx + pitch * 0.3, top + 6],
      [cx + pitch * 0.26, top + 20],
    ];
    marks.push(plate(`${name}/needle${i}`, taperedStrip(hook, 5, 3), i % 2 ? 'indigo' : 'ink', 2.6, 0));
  }
  return marks;
};

/** The finishing vat: the cloth goes down into the liquor and comes up changed. */
export const finishing: DrawMachine = (space) => {
  const { box, name } = space;
  const waterTop = box.y + box.height * 0.52;
  const cloth: Point[] = [
    [box.x + box.width * 0.1, box.y + box.height * 0.2],
    [box.x + box.width * 0.34, box.y + box.height * 0.78],
    [box.x + box.width * 0.66, box.y + box.height * 0.78],
    [box.x + box.width * 0.9, box.y + box.height * 0.2],
  ];
  return [
    slab(space),
    plate(
      `${name}/vat`,
      rectangle(box.x + box.width * 0.08, waterTop, box.width * 0.84, box.height * 0.4),
      'mid',
      2.6,
      0,
    ),
    {
      kind: 'stitches',
      stitches: [0.12, 0.24, 0.36].flatMap((share, i) =>
        partStitches(
          'water',
          [
            [box.x + box.width * 0.12, waterTop + box.height * share],
            [box.x + box.width * 0.88, waterTop + box.height * share],
          ],
          `${name}/wave${i}`,
        ),
      ),
      ink: 'faded',
      width: 1.6,
    },
    plate(
      `${name}/cloth`,
      taperedStrip(cloth, Math.min(10, box.width * 0.16), Math.min(10, box.width * 0.16)),
      'lint',
      2.6,
      0,
    ),
    ...disc(`${name}/rollLeft`, cloth[1]![0], cloth[1]![1] - 4, Math.min(12, box.width * 0.14), 'weld', 1.2),
    ...disc(`${name}/rollRight`, cloth[2]![0], cloth[2]![1] - 4, Math.min(12, box.width * 0.14), 'weld', 1.2),
  ];
};

/** The table where it ends: a mat, a square of the cloth, a needle, a spool. */
export const sewingTable: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const s = unit;
  const { name } = space;
  const at = (dx: number, dy: number): Point => [x + dx * s, y + dy * s];
  const grid: Stitch[] = [];
  for (let i = -3; i <= 3; i++)
    grid.push([...at(i * 0.28, -0.86), ...at(i * 0.28, 0.9)], [...at(-0.92, i * 0.28), ...at(0.92, i * 0.28)]);
  const thread: Point[] = [at(0.62, 0.36), at(0.3, 0.72), at(-0.2, 0.62), at(-0.34, 0.3)];
  const winds: Stitch[] = Array.from({ length: 9 }, (_, i) => [
    ...at(0.5, 0.02 + i * 0.052),
    ...at(0.8, 0 + i * 0.052),
  ]);
  return [
    plate(`${name}/mat`, [at(-0.98, -0.92), at(0.98, -0.96), at(0.96, 0.96), at(-0.97, 0.98)], 'bollGreen', 6, 0),
    { kind: 'stitches', stitches: grid, ink: 'youngGreen', width: 1, flat: true },
    plate(`${name}/cloth`, [at(-0.74, -0.66), at(0.2, -0.7), at(0.24, 0.22), at(-0.7, 0.26)], 'lint', 4, 7),
    {
      kind: 'stitches',
      stitches: weaveStitches(x - 0.62 * s, y - 0.56 * s, 0.74 * s, 0.72 * s, 8, 12),
      ink: 'mid',
      width: Math.max(1.1, s * 0.014),
      flat: true,
    },
    plate(`${name}/reelTop`, [at(0.42, -0.12), at(0.88, -0.12), at(0.82, 0), at(0.48, 0)], 'walnut', 2.6, 0),
    bar(`${name}/thread`, x + 0.5 * s, y, 0.3 * s, 0.46 * s, 'madder', 2.6),
    { kind: 'stitches', stitches: winds, ink: 'spentMadder', width: 1.6 },
    plate(`${name}/reelBottom`, [at(0.48, 0.46), at(0.82, 0.46), at(0.88, 0.58), at(0.42, 0.58)], 'walnut', 2.6, 0),
    {
      kind: 'stitches',
      stitches: thread.slice(1).map((to, i) => [...thread[i]!, ...to] as const),
      ink: 'madder',
      width: Math.max(1.6, s * 0.022),
    },
    plate(
      `${name}/needle`,
      taperedStrip([at(-0.34, 0.3), at(-0.02, 0.02), at(0.34, -0.32)], s * 0.05, s * 0.012),
      'ink',
      2.6,
      0,
    ),
    {
      kind: 'stitches',
      stitches: runningStitches([at(-0.62, 0.12), at(-0.36, 0.12)], `${name}/seam`, { closed: false, on: 6, off: 4 }),
      ink: 'madder',
      width: 1.8,
    },
  ];
};

/** A patch of plain weave: the weft as it shows on the face, over every other end, row by row in turn. */
function weaveStitches(x: number, y: number, width: number, height: number, columns: number, rows: number): Stitch[] {
  const stitches: Stitch[] = [];
  const pitchX = width / columns;
  const pitchY = height / rows;
  for (let row = 0; row < rows; row++)
    for (let column = row % 2; column < columns; column += 2) {
      const cy = y + (row + 0.5) * pitchY;
      stitches.push([x + (column + 0.12) * pitchX, cy, x + (column + 0.88) * pitchX, cy]);
    }
  return stitches;
}
