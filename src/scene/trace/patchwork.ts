import type { InkName } from '../../style/inks.ts';
import { patch } from '../cloth/patch.ts';
import type { Box } from '../cloth/point.ts';
import type { Mark, Point } from '../display-list.ts';

/** Finished side of a block, inches. */
const blockInches = 13;
const darks: readonly InkName[] = ['indigo', 'madder', 'bollGreen', 'walnut', 'mid'];
const lights: readonly InkName[] = ['muslin', 'weldPale', 'fadedPale', 'blush', 'calico'];

/** A quilt top of half-square triangles, turned about so that they meet in stars and squares. */
export function patchwork(name: string, box: Box, pxPerInch: number): Mark[] {
  const columns = Math.max(2, Math.round(box.width / pxPerInch / blockInches));
  const rows = Math.max(2, Math.round(box.height / pxPerInch / blockInches));
  const [wide, tall] = [box.width / columns, box.height / rows];
  const marks: Mark[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const [x, y] = [box.x + column * wide, box.y + row * tall];
      const corners: readonly Point[] = [
        [x, y],
        [x + wide, y],
        [x + wide, y + tall],
        [x, y + tall],
      ];
      // Blocks are turned by where they stand, so that the dark halves run together.
      const turn = (column % 2) + 2 * (row % 2);
      const half = (from: number): Point[] => [0, 1, 2].map((step) => corners[(turn + from + step) % 4]!);
      const ring = Math.min(column, columns - 1 - column, row, rows - 1 - row);
      const cut = { shadow: 0, seam: 0, grain: null, scissors: { miss: 0.6, snip: 60, bow: 0.002 } } as const;
      marks.push(
        patch(`${name}/${row}/${column}/light`, half(0), lights[(ring + row) % lights.length]!, cut),
        patch(`${name}/${row}/${column}/dark`, half(2), darks[(ring + column + row) % darks.length]!, cut),
      );
    }
  }
  return marks;
}
