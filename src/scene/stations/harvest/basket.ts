import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import type { Box } from '../../cloth/point.ts';
import type { Mark, Stitch } from '../../display-list.ts';

/** What the gathered cotton falls into: a basket with its near side cut away. */
export function basketStill(name: string, { x, y, width, height }: Box): Mark[] {
  const lean = width * 0.06;
  return [
    patch(
      name,
      [
        [x - lean, y],
        [x + width + lean, y],
        [x + width, y + height],
        [x, y + height],
      ],
      'walnutWarm',
      { shadow: 4, seam: 5, scissors: { miss: 1.4 } },
    ),
  ];
}

/** How full it is: its floor and all below a level, under a last row of tufts. */
export function basketFill(name: string, { x, y, width, height }: Box, share: number): Mark[] {
  const inset = 7;
  const room = height - inset - height * 0.12;
  const top = y + height - inset - room * share;
  const left = x + inset * 0.6;
  const right = x + width - inset * 0.6;
  const marks: Mark[] = [];
  if (share > 0.01) {
    marks.push(
      patch(
        `${name}/fill`,
        [
          [left, top],
          [right, top],
          [right - 1, y + height - inset],
          [left + 1, y + height - inset],
        ],
        'lint',
        { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' },
      ),
      ...[0.16, 0.5, 0.84].flatMap((across, i) =>
        pieceMarks('lint', `${name}/top${i}`, {
          x: left + (right - left) * across,
          y: top + 2,
          size: width * 0.19,
        }),
      ),
    );
    const rows: Stitch[] = [];
    for (let line = top + width * 0.3; line < y + height - inset - 3; line += width * 0.16)
      for (let at = left + 7 + (Math.round(line) % 2) * 5; at < right - 9; at += 14)
        rows.push([at, line, at + 6, line + 0.8]);
    marks.push({ kind: 'stitches', stitches: rows, ink: 'faded', width: 1.5, flat: true });
  }
  // Staves in front of the cotton.
  marks.push({
    kind: 'stitches',
    stitches: [0.2, 0.4, 0.6, 0.8].map(
      (share4): Stitch => [x + width * share4, y + 3, x + width * share4, y + height - 3],
    ),
    ink: 'walnut',
    width: 2.4,
  });
  return marks;
}
