import { lettered } from '../cloth/lettering.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';
import { closeThreads, type DrawnThreads } from './close-cloth.ts';

export interface SwatchCard {
  readonly swatches: readonly {
    readonly id: string;
    readonly name: string;
    readonly note: string;
    readonly threads: DrawnThreads;
  }[];
  readonly width: number;
  /** Times life size. */
  readonly times: number;
}

const GAP_PX = 12;
const LETTER_PX = 15;
const CAPTION_PX = LETTER_PX * 2.6;
const INSIDE_PX = 7;
const wideFrom = 430;

const layout = (width: number, count: number) => {
  const columns = width < wideFrom ? 2 : 3;
  const cell = (width - GAP_PX * columns) / columns;
  const tall = cell * 0.72;
  return { columns, cell, tall, rows: Math.ceil(count / columns), pitch: tall + CAPTION_PX + GAP_PX };
};

/** Height that goes with a width, px. */
export function swatchCardHeight(width: number, count: number): number {
  const { rows, pitch } = layout(width, count);
  return Math.ceil(rows * pitch);
}

/** Swatches in rows, all at one magnification, each over its name. */
export function swatchCard({ swatches, width, times }: SwatchCard): DisplayList {
  const { columns, cell, tall, pitch } = layout(width, swatches.length);
  return swatches.flatMap(({ id, name, note, threads }, i): Mark[] => {
    const x = 2 + (i % columns) * (cell + GAP_PX);
    const y = 3 + Math.floor(i / columns) * pitch;
    const inside = {
      x: x + INSIDE_PX,
      y: y + INSIDE_PX,
      width: cell - INSIDE_PX * 2,
      height: tall - INSIDE_PX * 2,
    };
    return [
      patch(`lesson/swatch/${id}`, rectangle(x, y, cell, tall), 'ink', { shadow: 2.6, seam: 0, grain: null }),
      group(id, closeThreads(threads, inside, times), 1),
      ...lettered([name], [x + 1, y + tall + LETTER_PX + 2], { size: LETTER_PX, ink: 'ink', bold: true }),
      ...lettered([note], [x + 1, y + tall + LETTER_PX * 2.15 + 2], { size: LETTER_PX, ink: 'ink' }),
    ];
  });
}
