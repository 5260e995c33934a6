import type { InkName } from '../../style/inks.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { type DisplayList, group } from '../display-list.ts';

/** A place where mass ended: its name, its share of all, 0 to 1, and the share in words. */
export interface EndedStrip {
  readonly key: string;
  readonly name: string;
  readonly share: number;
  readonly text: string;
}

const letterPx = 17;
/** Room for the names on the left and the numbers on the right, as shares of the width. */
const namesWide = 0.36;
const numbersWide = 0.12;
const inks: Readonly<Record<string, InkName>> = { seedHouse: 'walnut', cloth: 'indigo', ginTrash: 'leafGreen' };

/** Strips of cloth one under the other, as long as their shares, on one scale. */
export function endedStrips(strips: readonly EndedStrip[], width: number, height: number): DisplayList {
  const most = Math.max(...strips.map(({ share }) => share));
  const rowPx = height / strips.length;
  const from = width * namesWide;
  const px = (width * (1 - namesWide - numbersWide)) / most;
  return strips.map(({ key, name, share, text }, i) => {
    const y = i * rowPx;
    const words = (said: string, x: number, anchor: 'start' | 'end', bold: boolean) =>
      ({
        kind: 'text',
        text: said,
        x,
        y: y + rowPx / 2 + letterPx / 3,
        size: letterPx,
        ink: 'ink',
        anchor,
        bold,
      }) as const;
    const strip = rectangle(from, y + rowPx * 0.14, Math.max(2, share * px), rowPx * 0.72);
    const cut = { shadow: 2.6, seam: share * px > 24 ? 4 : 0, scissors: { miss: 0.8, snip: 90, bow: 0.003 } } as const;
    return group(key, [
      words(name, from - 10, 'end', false),
      patch(`ended/${key}`, strip, inks[key] ?? 'weld', cut),
      words(text, from + share * px + 8, 'start', true),
    ]);
  });
}
