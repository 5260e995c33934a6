import { cutPiece, PIECE_CUTS } from '../cloth/piece.ts';
import { letter, slotIn } from '../cloth/slot-words.ts';
import { group, type Mark } from '../display-list.ts';
import { type Stretch, type TraceDrawing, wordsPx } from './trace-drawing.ts';

const edge = 22;

/** The bolls, counted: each drawn stands for a stated number. */
export function bollStretch(drawing: TraceDrawing, top: number, width: number): Stretch {
  const { bolls } = drawing;
  const size = wordsPx(drawing, width);
  const cell = width < 460 ? 30 : width < 760 ? 36 : 46;
  const columns = Math.floor((width - 2 * edge) / cell);
  const drawn = Math.max(1, Math.round(bolls.count / bolls.each));
  const rows = Math.ceil(drawn / columns);
  const head = size * 4.3;
  const pieces: Mark[] = Array.from({ length: drawn }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    const x = edge + (column + 0.5) * cell;
    const y = top + edge + head + (row + 0.5) * cell;
    return cutPiece('lint', i % PIECE_CUTS, 'boll', x, y, cell * 0.47);
  }).flat();
  return {
    marks: [
      ...letter(bolls.text, slotIn({ x: edge, y: top + edge * 0.7, width: width - 2 * edge, height: size * 2.4 }), {
        size: size * 1.9,
        bold: true,
        ink: 'lint',
      }),
      ...letter(
        bolls.scale,
        slotIn({ x: edge, y: top + edge * 0.7 + size * 2.4, width: width - 2 * edge, height: size * 1.6 }),
        { size, ink: 'lint', italic: true },
      ),
      group('bolls', pieces, drawn),
    ],
    height: 2 * edge + head + rows * cell,
  };
}
