import type { InkName } from '../../style/inks.ts';
import { openBollMarks } from '../cloth/boll.ts';
import { dimension } from '../cloth/dimension.ts';
import { patch } from '../cloth/patch.ts';
import type { Box } from '../cloth/point.ts';
import { type DisplayList, group, type Mark, type Point } from '../display-list.ts';
import { cutPatch } from '../stations/sewing/cut-patch.ts';

export interface BollsAndBlock {
  /** A square number: bolls on the left, as many patches on the right. */
  readonly bolls: number;
  /** Width of the picture, px. */
  readonly width: number;
  readonly labels: { readonly side: string; readonly bolls: string };
}

/** Two cloths in turn, as a nine-patch block has them. */
const cloths: readonly { readonly ink: InkName; readonly printed: boolean }[] = [
  { ink: 'indigo', printed: false },
  { ink: 'muslin', printed: true },
];
const letterPx = 16;
const footPx = 34;

/** Height that goes with a width, px. */
export const bollsAndBlockHeight = (width: number): number => Math.round(width * 0.47) + footPx;

/** Bolls, and the block that is sewn of their cloth: one patch a boll. Bolls and cloth are not to one scale; the side is written. */
export function bollsAndBlock({ bolls, width, labels }: BollsAndBlock): DisplayList {
  const side = Math.round(Math.sqrt(bolls));
  const tall = bollsAndBlockHeight(width) - footPx;
  const block: Box = { x: width - tall - 10, y: 8, width: tall - 10, height: tall - 10 };
  const field: Box = { x: 4, y: 8, width: tall - 10, height: tall - 10 };
  const cell = field.width / side;
  const bollMarks: Mark[] = Array.from({ length: bolls }, (_, i) => {
    const row = Math.floor(i / side);
    const placing = {
      x: field.x + ((i % side) + 0.5) * cell,
      y: field.y + (row + 0.5) * cell,
      size: cell * 0.36,
      turn: (i * 0.7) % 1.2,
      wide: 1,
    };
    return group(`boll ${i + 1}`, openBollMarks(`lesson/boll${i}`, placing, i % 3 === 2 ? 5 : 4));
  });
  const patchSide = block.width / side;
  const seam = Math.max(3, patchSide / 16);
  const patches: Mark[] = Array.from({ length: bolls }, (_, i) => {
    const row = Math.floor(i / side);
    const box = {
      x: block.x + (i % side) * patchSide,
      y: block.y + row * patchSide,
      width: patchSide,
      height: patchSide,
    };
    const look = cloths[(row + (i % side)) % 2]!;
    return group(`patch ${i + 1}`, cutPatch(`lesson/patch${i}`, box, seam, look));
  });
  const foot = block.y + block.height + 14;
  return [
    group('bolls', bollMarks, bolls),
    ...arrow([field.x + field.width + 8, tall / 2], [block.x - 10, tall / 2]),
    group('patches', patches, bolls),
    ...dimension([block.x, foot], [block.x + block.width, foot], '', { ink: 'ink', size: letterPx }),
    words(labels.side, [block.x + block.width / 2, foot + letterPx + 3]),
    words(labels.bolls, [field.x + field.width / 2, foot + letterPx + 3]),
  ];
}

const words = (text: string, [x, y]: Point): Mark => ({
  kind: 'text',
  text,
  x,
  y,
  size: letterPx,
  ink: 'ink',
  anchor: 'middle',
  bold: true,
});

/** A cut arrow from what grew to what was made of it; left out where there is no room. */
function arrow(from: Point, to: Point): Mark[] {
  const [x0, y] = from;
  const x1 = to[0];
  if (x1 - x0 < 16) return [];
  const neck = x1 - 12;
  const outline: Point[] = [
    [x0, y - 5],
    [neck, y - 5],
    [neck, y - 13],
    [x1, y],
    [neck, y + 13],
    [neck, y + 5],
    [x0, y + 5],
  ];
  return [patch('lesson/arrow', outline, 'weld', { shadow: 1.2, seam: 0, grain: null })];
}
