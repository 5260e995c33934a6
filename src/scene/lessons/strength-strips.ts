import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';

/** A cotton's strength as two strips: of its fibers, and of the thread laid over it. */
export interface StrengthStrip {
  readonly name: string;
  /** On one scale for all strips. */
  readonly bundle: number;
  readonly thread: number;
  readonly bundleText: string;
  readonly threadText: string;
}

const letterPx = 15;
const rowPx = 74;

/** Height that goes with a number of strips, px. */
export const strengthStripsHeight = (rows: number): number => rows * rowPx + 6;

/** Strips of cloth, one above the other: pale as long as the fibers are strong, indigo over it as long as the thread is. */
export function strengthStrips(rows: readonly StrengthStrip[], width: number): DisplayList {
  const most = Math.max(...rows.map(({ bundle }) => bundle));
  const px = (width - 24) / most;
  return rows.map(({ name, bundle, thread, bundleText, threadText }, i) => {
    const y = i * rowPx + 22;
    const cut = { shadow: 2.6, scissors: { miss: 1, snip: 90, bow: 0.003 } } as const;
    const marks: Mark[] = [
      text(name, 6, y - 6, 'ink', 'start', true),
      patch(`strength${i}/fibers`, rectangle(6, y, bundle * px, 42), 'lint', { ...cut, seam: 5 }),
      patch(`strength${i}/thread`, rectangle(6, y, thread * px, 42), 'indigo', { ...cut, seam: 5 }),
      text(threadText, 6 + thread * px - 10, y + 27, 'lint', 'end', true),
      text(bundleText, 6 + bundle * px - 10, y + 27, 'ink', 'end', false),
    ];
    return group(name, marks);
  });
}

const text = (
  words: string,
  x: number,
  y: number,
  ink: 'ink' | 'lint',
  anchor: 'start' | 'end',
  bold: boolean,
): Mark => ({ kind: 'text', text: words, x, y, size: letterPx, ink, anchor, ...(bold ? { bold } : {}) });
