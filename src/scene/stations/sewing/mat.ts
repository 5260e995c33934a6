import { openBollMarks } from '../../cloth/boll.ts';
import { dimension } from '../../cloth/dimension.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { slipAt } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import { cutPatch, grainArrow } from './cut-patch.ts';
import { handNeedle } from './notions.ts';
import type { SewingScene } from './sewing-input.ts';
import type { SewingLayout } from './sewing-layout.ts';

/** Scale of the mat, px to the inch: patch and dimension lines fill its height, two patches and a gap its width. */
const pxPerInch = (mat: Box, patchInches: number, words: number): number =>
  Math.min((mat.height - words) / patchInches, mat.width / (patchInches * 2.5));

/** The mat with its ruled squares, one boll, and beside it the patch that its lint makes, to the scale of the squares. */
export function matMarks(scene: SewingScene, layout: SewingLayout): Mark[] {
  const { mat, text } = layout;
  const { labels, grid, patchInches, seamInches } = scene;
  const chalk = scene.mat ? 'lint' : 'ink';
  const inch = pxPerInch(mat, patchInches ?? 4, text * (layout.roomy ? 4.2 : 2.6));
  const within = [0, scene.size.width] as const;
  const marks: Mark[] = [
    patch('sewing/mat', rectangle(mat.x, mat.y, mat.width, mat.height), scene.mat ? 'bollGreen' : 'walnutPale', {
      shadow: 4,
      seam: 0,
      scissors: { miss: 1.6, snip: 90, bow: 0.002 },
      grain: scene.mat ? null : 0,
    }),
    ...ruledSquares(mat, inch * grid.inches, grid.numberEach, scene.mat),
  ];
  if (patchInches === null) return marks;
  const side = patchInches * inch;
  const boll = side * 0.47;
  const middle = mat.y + mat.height * 0.5 + (layout.roomy ? 0 : -text * 0.5);
  const gap = (mat.width - side - boll * 2.3) / 3;
  const bollX = mat.x + gap + boll * 1.15;
  const cut: Box = { x: mat.x + mat.width - gap - side, y: middle - side / 2, width: side, height: side };
  marks.push(
    group(
      'boll',
      openBollMarks('sewing/boll', { x: bollX, y: middle, size: boll, wide: 1, turn: 0.1 }, scene.locks),
      1,
    ),
    ...threadTo([bollX + boll * 0.82, middle + boll * 0.5], [cut.x + seamInches * inch, cut.y + side * 0.62]),
    group('patch', cutPatch('sewing/patch', cut, seamInches * inch, scene.cloth), 1),
    ...handNeedle(
      'sewing/needle',
      [cut.x - side * 0.02, cut.y + side * 0.56],
      [cut.x + side * 0.24, cut.y + side * 0.72],
    ),
    grainArrow([cut.x + side * 0.78, cut.y + side * 0.24], [cut.x + side * 0.78, cut.y + side * 0.76], 'indigo'),
    ...dimension([cut.x, cut.y + side + 5 + text * 0.8], [cut.x + side, cut.y + side + 5 + text * 0.8], '', {
      ink: chalk,
      size: text,
    }),
    ...slipAt('sewing/side', labels.side, [cut.x + side / 2, cut.y + side + 5], {
      size: text,
      anchor: 'middle',
      bold: true,
      within,
    }),
  );
  const seam = seamInches * inch;
  if (layout.roomy)
    marks.push(
      ...dimension([cut.x + seam, cut.y - 5 - text * 0.75], [cut.x + side - seam, cut.y - 5 - text * 0.75], '', {
        ink: chalk,
        size: text,
      }),
      ...slipAt('sewing/sewn', labels.sewn, [cut.x + side / 2, cut.y - 5 - text * 1.47], {
        size: text,
        anchor: 'middle',
        italic: true,
        within,
      }),
    );
  if (layout.roomy && side > text * 11)
    marks.push(
      ...slipAt('sewing/grain', labels.grain, [cut.x + side * 0.74, cut.y + side * 0.42], {
        size: text,
        anchor: 'end',
        italic: true,
      }),
    );
  return marks;
}

/** The squares run to the edges of the mat, every few lines a stronger one. */
function ruledSquares(mat: Box, pitch: number, numberEach: number, printed: boolean): Mark[] {
  const inset = 4;
  const [left, right] = [mat.x + inset, mat.x + mat.width - inset];
  const [top, foot] = [mat.y + inset, mat.y + mat.height - inset];
  const lines: Stitch[] = [];
  const strong: Stitch[] = [];
  const from = pitch * 0.5;
  for (let i = 0; left + from + i * pitch < right; i++)
    (i % numberEach === 0 ? strong : lines).push([left + from + i * pitch, top, left + from + i * pitch, foot]);
  for (let i = 0; foot - from - i * pitch > top; i++)
    (i % numberEach === 0 ? strong : lines).push([left, foot - from - i * pitch, right, foot - from - i * pitch]);
  const ink = printed ? 'youngGreen' : 'walnutWarm';
  return [
    { kind: 'stitches', stitches: lines, ink, width: 0.7, flat: true },
    { kind: 'stitches', stitches: strong, ink, width: 1.4, flat: true },
  ];
}

/** The thread runs from the boll to the needle in one loose sweep. */
function threadTo(from: Point, to: Point): Mark[] {
  const path: Point[] = Array.from({ length: 17 }, (_, i) => {
    const t = i / 16;
    const sag = Math.sin(t * Math.PI) * 26 + Math.sin(t * Math.PI * 2) * 10;
    return [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t + sag];
  });
  return [
    {
      kind: 'stitches',
      stitches: path.slice(1).map((point, i) => [...path[i]!, ...point] as const),
      ink: 'madder',
      width: 2.6,
    },
  ];
}
