import { lettered } from '../cloth/lettering.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { runningStitches } from '../cloth/running-stitch.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';
import { closeThread } from './thread-close.ts';

/** One thread of the picture; without a thickness it could not be spun. */
export interface ThreadRow {
  readonly id: string;
  /** What stands above it, and at the right end of that line. */
  readonly name: string;
  readonly note: string;
  readonly thread: null | {
    readonly diameterMm: number;
    readonly turnsPerMm: number;
    readonly cvPercent: number;
    readonly endsPerMm: number;
    readonly plies: number;
  };
}

export interface ThreadRows {
  readonly rows: readonly ThreadRow[];
  /** Width of the picture, px. */
  readonly width: number;
  /** Times life size. */
  readonly times: number;
  /** One hair is drawn for so many fibre ends; 0 draws none. */
  readonly endsPerHair: number;
  /** Height of a row's pad, px. */
  readonly padPx: number;
}

/** CSS pixels to the millimetre: what a magnification is reckoned from. */
const PX_PER_MM = 96 / 25.4;
const LETTER_PX = 16;
const HEAD_PX = 25;
const GAP_PX = 9;
const MARGIN = 5;

/** Height that goes with so many rows, px. */
export const threadRowsHeight = (rows: number, padPx: number): number => rows * (HEAD_PX + padPx + GAP_PX) + 4;

/** Threads on dark pads, one above the other, all at one magnification. */
export function threadRows({ rows, width, times, endsPerHair, padPx }: ThreadRows): DisplayList {
  const pxPerMm = PX_PER_MM * times;
  const long = width - MARGIN * 2;
  return rows.flatMap((row, i): Mark[] => {
    const top = i * (HEAD_PX + padPx + GAP_PX);
    const pad = { x: MARGIN, y: top + HEAD_PX, width: long, height: padPx };
    const words = [
      ...lettered([row.name], [pad.x, top + 17], { size: LETTER_PX, ink: 'ink', bold: true }),
      ...lettered([row.note], [pad.x + long, top + 17], { size: LETTER_PX, ink: 'ink', anchor: 'end' }),
    ];
    const outline = rectangle(pad.x, pad.y, pad.width, pad.height);
    if (!row.thread) return [group(row.id, [chalked(row.id, outline)], 0), ...words];
    const { diameterMm, turnsPerMm, cvPercent, endsPerMm, plies } = row.thread;
    const lengthPx = long - 16;
    const marks = closeThread(`lesson/thread/${row.id}`, {
      x: pad.x + 8,
      y: pad.y + padPx / 2,
      lengthPx,
      diameterPx: diameterMm * pxPerMm,
      turnsPerPx: turnsPerMm / pxPerMm,
      cvPercent,
      hairs: endsPerHair > 0 ? ((lengthPx / pxPerMm) * endsPerMm) / endsPerHair : 0,
      plies,
      ink: 'lint',
    });
    const cloth = patch(`lesson/pad/${row.id}`, outline, 'indigo', { shadow: 2.6, seam: 0, scissors: { miss: 1.6 } });
    return [cloth, group(row.id, marks, 1), ...words];
  });
}

/** Where a thread would lie if it could be spun: chalk, as for everything that is possible and not there. */
const chalked = (name: string, outline: ReturnType<typeof rectangle>): Mark => ({
  kind: 'stitches',
  stitches: runningStitches(outline, `lesson/none/${name}`, { on: 7, off: 6 }),
  ink: 'chalk',
  width: 1.6,
  flat: true,
});
