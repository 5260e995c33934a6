import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { chalkRule, notchMarks } from '../../cloth/ruler.ts';
import type { Mark } from '../../display-list.ts';

export interface HeightTick {
  /** Above the soil, inches. */
  readonly inches: number;
  /** A tick without words is short. */
  readonly text?: string;
}

/** A tailor's tape that hangs beside the plant, from the top of the picture to the soil. */
export function heightTapeMarks(
  box: Box,
  soilY: number,
  pxPerInch: number,
  ticks: readonly HeightTick[],
  textPx: number,
): Mark[] {
  const room = soilY - box.y - textPx * 0.8;
  const shown = ticks
    .filter(({ inches }) => inches * pxPerInch <= room)
    .map(({ inches, text }) => (text === undefined ? { at: inches * pxPerInch } : { at: inches * pxPerInch, text }));
  return [
    patch('height/tape', rectangle(box.x, box.y, box.width, box.height), 'muslin', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 160, bow: 0.002 },
    }),
    ...chalkRule([box.x + box.width - 12, soilY], soilY - box.y, shown, {
      direction: 'up',
      ink: 'ink',
      size: textPx,
    }),
  ];
}

/** The notch that marks how tall the plant stands. */
export const heightNotchMarks = (box: Box, soilY: number, heightPx: number): Mark[] =>
  notchMarks('height/notch', [box.x + box.width + 8, soilY - heightPx], 'right', 'madder');
