import type { Box } from '../../cloth/point.ts';
import { hemPx } from '../flow/caption-hem.ts';
import type { ClassingScene } from './classing-input.ts';

/** Where things lie in the classing room, px. */
export interface ClassingLayout {
  readonly roomy: boolean;
  readonly wide: boolean;
  readonly text: number;
  readonly pad: number;
  readonly table: Box;
  readonly sample: Box;
  readonly bale: Box;
  /** Length, colour, micronaire, leaf; two where a hand and an eye read. */
  readonly cells: readonly Box[];
  readonly price: Box;
  readonly band: { readonly y: number; readonly px: number };
  readonly pocket: Box;
  readonly onward: Box;
}

export const captionSize = (text: number, roomy: boolean): number => (roomy ? Math.max(14, text * 0.9) : 13);

/** Numbers along a scale. */
export const tickSize = (text: number): number => Math.max(text > 13.5 ? 14 : 13, text * 0.86);

/** Cells of a grid, row by row. */
function gridOf({ x, y, width, height }: Box, columns: number, rows: number, gapX: number, gapY = gapX): Box[] {
  const wide = (width - gapX * (columns - 1)) / columns;
  const tall = (height - gapY * (rows - 1)) / rows;
  return Array.from({ length: columns * rows }, (_, i) => ({
    x: x + (i % columns) * (wide + gapX),
    y: y + Math.floor(i / columns) * (tall + gapY),
    width: wide,
    height: tall,
  }));
}

/** The bale and its sample at the left, the scales on the table, the price beside or above them, the cotton along the foot. */
export function layClassing(scene: ClassingScene, caption: string): ClassingLayout {
  const { width, height } = scene.size;
  const wide = width > height * 1.15;
  const roomy = width > 500;
  const text = roomy ? Math.min(22, Math.max(14, width / (wide ? 56 : 46))) : 13;
  const pad = roomy ? Math.max(9, width * 0.014) : 6;
  const foot = height - hemPx(caption, width, captionSize(text, roomy)) - pad * 0.6;
  const stripTall = height * (wide ? 0.17 : roomy ? 0.115 : 0.1);
  const strip = foot - stripTall;
  const bandPx = stripTall * 0.62;
  const band = { y: foot - bandPx / 2 - 2, px: bandPx };
  const left = width * (wide ? 0.235 : roomy ? 0.34 : 0.4);
  const top = pad;
  const tableFoot = strip - pad * 0.4;
  // Tall: the scales above, the bale and its price below them, so that the bale stands on its band.
  const lower = wide ? tableFoot - top : (tableFoot - top) * (roomy ? 0.47 : 0.58);
  const lowerTop = tableFoot - lower;
  const pocketWide = width * (wide ? 0.27 : roomy ? 0.34 : 0.29);
  const pocket: Box = { x: width - pad - pocketWide, y: strip + 4, width: pocketWide, height: stripTall - 4 };
  // On a phone the words lie over the band; elsewhere on its upper edge, at their full size.
  const onwardTall = Math.max(text * 1.75, stripTall - bandPx - 5);
  const onward: Box = roomy
    ? { x: left, y: strip + stripTall - bandPx - 2 - onwardTall, width: pocket.x - left - 6, height: onwardTall }
    : { x: left, y: strip - 3, width: pocket.x - left - 6, height: stripTall + 2 };
  const sampleTall = (foot - lowerTop) * (width > 700 ? 0.37 : roomy ? 0.43 : 0.53);
  const sample: Box = { x: pad, y: lowerTop, width: left - pad * 1.5, height: sampleTall };
  const baleTall = foot - lowerTop - sampleTall - text * 0.9;
  const baleWide = Math.min(left * 0.62, baleTall * 0.92);
  const bale: Box = {
    x: pad + (left - pad * 1.5 - baleWide) / 2,
    y: foot - baleTall,
    width: baleWide,
    height: baleTall,
  };
  const table: Box = wide
    ? { x: left, y: top, width: width - pad - left, height: tableFoot - top }
    : { x: pad, y: top, width: width - pad * 2, height: lowerTop - top - pad };
  const inset = roomy ? 13 : 9;
  const priceWide = wide ? width * (width < 700 ? 0.335 : 0.29) : width - pad - left;
  const price: Box = wide
    ? {
        x: table.x + table.width - priceWide - inset,
        y: top + inset,
        width: priceWide,
        height: table.height - inset * 2,
      }
    : { x: left, y: lowerTop, width: priceWide, height: lower - 2 };
  const room: Box = {
    x: table.x + inset,
    y: table.y + inset,
    width: wide ? price.x - table.x - inset * 2 : table.width - inset * 2,
    height: table.height - inset * 2,
  };
  const few = scene.micronaire === null && scene.leaf === null;
  const cells = few
    ? gridOf(room, roomy ? 1 : 2, roomy ? 2 : 1, inset * 0.7)
    : gridOf(room, 2, 2, roomy ? inset * 1.3 : 12, roomy ? inset * 1.3 : 6);
  return { roomy, wide, text, pad, table, sample, bale, cells, price, band, pocket, onward };
}
