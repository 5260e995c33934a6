import type { InkName } from '../../style/inks.ts';
import { group, type Mark, type Point } from '../display-list.ts';
import { offsetPath } from './offset-path.ts';
import { partCloth, type Shown } from './part-cloth.ts';
import { partStitches, partThreadWidth } from './part-stitch.ts';
import { patch } from './patch.ts';
import { pathLength } from './point.ts';
import { runningStitches } from './running-stitch.ts';

/** Below this width a band is one thread: never a thicker lie. */
export const THREAD_BELOW_PX = 2;
const THREAD_PX = 1.7;
/** Strips wider than this carry a row of their part's stitch. */
const ROOM_FOR_ROW_PX = 7;

export interface BandStrip {
  readonly part: Shown;
  /** True width, px: mass times the scale of the scene. */
  readonly width: number;
}

export interface BandStyle {
  /** Distance between quilting rows, px: a stated mass from row to row. */
  readonly rowPx: number;
}

export const bandWidth = (strips: readonly BandStrip[]): number => strips.reduce((sum, strip) => sum + strip.width, 0);

/**
 * A band of cloth strips, one for each part, that folds with mitred corners.
 * @param path middle line of the whole band; strips lie from its left side to its right as it runs
 */
export function bandMarks(
  name: string,
  path: readonly Point[],
  strips: readonly BandStrip[],
  { rowPx }: BandStyle,
): Mark[] {
  const width = bandWidth(strips);
  if (width <= 0 || pathLength(path) < 1) return [];
  const shown = strips.filter((strip) => strip.width > 0);
  const main = shown.reduce((widest, strip) => (strip.width > widest.width ? strip : widest), shown[0]!);
  if (width < THREAD_BELOW_PX) return [group(`${name}/${main.part}`, [threadMark(name, path, main.part)])];
  const marks: Mark[] = segmentsOf(path, -width / 2, width / 2).map((outline, i) =>
    patch(`${name}/under${i}`, outline, partCloth[main.part].fill, {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  );
  let edge = -width / 2;
  const threads: Mark[] = [];
  for (const strip of shown) {
    const middle = offsetPath(path, edge + strip.width / 2);
    const stripName = `${name}/${strip.part}`;
    if (strip.width < THREAD_BELOW_PX) threads.push(group(stripName, [threadMark(stripName, middle, strip.part)]));
    else marks.push(group(stripName, stripMarks(stripName, path, strip, edge, rowPx)));
    edge += strip.width;
  }
  return [...marks, ...threads, ...foldMarks(name, path, width, main.part)];
}

/** A band of one plain cloth: there, but not what is being followed. */
export const plainBand = (name: string, path: readonly Point[], width: number, ink: InkName): Mark[] =>
  width < THREAD_BELOW_PX
    ? [
        {
          kind: 'stitches',
          stitches: path.slice(1).map((to, i) => [...path[i]!, ...to] as const),
          ink,
          width: THREAD_PX,
          flat: true,
        },
      ]
    : segmentsOf(path, -width / 2, width / 2).map((outline, i) =>
        patch(`${name}/plain${i}`, outline, ink, { shadow: 1.2, seam: 0, grain: null, scissors: 'asDrawn' }),
      );

const threadMark = (name: string, path: readonly Point[], part: Shown): Mark => {
  const fill = partCloth[part].fill;
  return {
    kind: 'stitches',
    stitches: path.slice(1).map((to, i) => [...path[i]!, ...to] as const),
    // A single white thread would vanish on cotton.
    ink: part === 'lint' ? 'mid' : fill,
    width: THREAD_PX,
    flat: name.length === 0,
  };
};

function stripMarks(name: string, path: readonly Point[], strip: BandStrip, edge: number, rowPx: number): Mark[] {
  const cloth = partCloth[strip.part];
  const marks: Mark[] = segmentsOf(path, edge, edge + strip.width).map((outline, i) =>
    patch(`${name}/${i}`, outline, cloth.fill, {
      shadow: 0,
      seam: 0,
      scissors: 'asDrawn',
      grain: strip.width > 16 ? 0 : null,
    }),
  );
  const row = (across: number, size: number): Mark => ({
    kind: 'stitches',
    stitches: partStitches(strip.part, offsetPath(path, across), `${name}/row${Math.round(across)}`, size),
    ink: strip.part === 'lint' ? 'lint' : cloth.thread,
    width: partThreadWidth(strip.part) * (size < 1 ? 0.75 : 1),
  });
  if (strip.width > rowPx * 1.25) {
    for (let across = rowPx; across < strip.width - 3; across += rowPx) marks.push(row(edge + across, 1));
  } else if (strip.width >= ROOM_FOR_ROW_PX) marks.push(row(edge + strip.width / 2, Math.min(1, strip.width / 13)));
  if (strip.part === 'lint' && strip.width > 14) marks.push(...lintEdges(name, path, edge, strip.width));
  return marks;
}

/** White cloth on the page needs an edge: a running stitch in indigo along both sides. */
const lintEdges = (name: string, path: readonly Point[], edge: number, width: number): Mark[] => [
  {
    kind: 'stitches',
    stitches: [edge + 2.6, edge + width - 2.6].flatMap((across, i) =>
      runningStitches(offsetPath(path, across), `${name}/edge${i}`, { closed: false, on: 9, off: 6 }),
    ),
    ink: 'indigo',
    width: 1.7,
  },
];

/** The seam where a band folds: two rows of small stitches along the mitre. */
function foldMarks(name: string, path: readonly Point[], width: number, part: Shown): Mark[] {
  if (width < 10) return [];
  const left = offsetPath(path, -width / 2);
  const right = offsetPath(path, width / 2);
  const stitches = path.slice(1, -1).flatMap((_, i) => {
    const from = left[i + 1]!;
    const to = right[i + 1]!;
    return [-2, 2].flatMap((shift) =>
      runningStitches(
        [
          [from[0] + shift, from[1]],
          [to[0] + shift, to[1]],
        ],
        `${name}/fold${i}/${shift}`,
        { closed: false, on: 5, off: 4 },
      ),
    );
  });
  return stitches.length === 0
    ? []
    : [{ kind: 'stitches', stitches, ink: part === 'lint' ? 'mid' : 'thread', width: 1.4 }];
}

/** The outline of each straight stretch of a strip, mitred where the path turns. */
function segmentsOf(path: readonly Point[], from: number, to: number): Point[][] {
  const near = offsetPath(path, from);
  const far = offsetPath(path, to);
  return path.slice(1).map((_, i) => [near[i]!, near[i + 1]!, far[i + 1]!, far[i]!]);
}
