import type { WeaveId } from '../../model/cloth/weaves.ts';
import type { InkName } from '../../style/inks.ts';
import { dimension } from '../cloth/dimension.ts';
import { flatThreads } from '../cloth/flat-threads.ts';
import { patch } from '../cloth/patch.ts';
import { type Box, rectangle } from '../cloth/point.ts';
import { type DisplayList, group, type Mark, type Stitch } from '../display-list.ts';
import { warpOver } from '../stations/weaving/swatch.ts';

/** Threads of a cloth as they are drawn. */
export interface DrawnThreads {
  readonly weave: WeaveId;
  readonly endsPerInch: number;
  readonly picksPerInch: number;
  readonly warpInches: number;
  readonly weftInches: number;
  readonly warpInk: InkName;
  readonly weftInk: InkName;
}

const PX_PER_INCH = 96;

/**
 * Cloth from above, warp upright, at true spacing and thickness over a dark ground: what is dark is open.
 * @param times times life size
 */
export function closeThreads(cloth: DrawnThreads, box: Box, times: number): Mark[] {
  const pxPerIn = PX_PER_INCH * times;
  const [pitchX, pitchY] = [pxPerIn / cloth.endsPerInch, pxPerIn / cloth.picksPerInch];
  const [warpPx, weftPx] = [cloth.warpInches * pxPerIn, cloth.weftInches * pxPerIn];
  const across = Math.max(1, Math.floor(box.width / pitchX));
  const along = Math.max(1, Math.floor(box.height / pitchY));
  const left = box.x + (box.width - across * pitchX) / 2;
  const top = box.y + (box.height - along * pitchY) / 2;
  const x = (end: number) => left + (end + 0.5) * pitchX;
  const y = (pick: number) => top + (pick + 0.5) * pitchY;
  const [right, foot] = [box.x + box.width, box.y + box.height];
  const ends = Array.from({ length: across }, (_, i): Stitch => [x(i), box.y + warpPx / 2, x(i), foot - warpPx / 2]);
  const picks = Array.from({ length: along }, (_, j): Stitch => [box.x + weftPx / 2, y(j), right - weftPx / 2, y(j)]);
  const over: Stitch[] = [];
  for (let j = 0; j < along; j++)
    for (let i = 0; i < across; i++) {
      if (warpOver(cloth.weave, i, j)) continue;
      // A pick dives between one end and the next: it shows half of the room it has.
      const half = Math.min(pitchX * 0.5, warpPx * 0.5 + pitchX * 0.14);
      over.push([x(i) - half, y(j), x(i) + half, y(j)]);
    }
  const edge = Math.max(0.8, Math.min(warpPx, weftPx) * 0.16);
  return [
    group('picks', [flatThreads(picks, cloth.weftInk, weftPx)], along),
    group('ends', [flatThreads(ends, 'ink', warpPx + edge), flatThreads(ends, cloth.warpInk, warpPx)], across),
    flatThreads(over, 'ink', weftPx + edge),
    flatThreads(over, cloth.weftInk, weftPx),
  ];
}

const RULE_PX = 30;
const MARGIN = 8;

/** Height that goes with a width, px. */
export const closeClothHeight = (width: number): number => Math.round(width * 0.5) + RULE_PX;

/** A cloth seen close on a dark pad, with a measure below. @param measure a length and what it is called */
export function closeCloth(
  cloth: DrawnThreads,
  width: number,
  times: number,
  measure: { readonly inches: number; readonly text: string },
): DisplayList {
  const tall = closeClothHeight(width) - RULE_PX;
  const pad = rectangle(2, 2, width - 6, tall - 4);
  const box = { x: 2 + MARGIN, y: 2 + MARGIN, width: width - 6 - MARGIN * 2, height: tall - 4 - MARGIN * 2 };
  const rule = measure.inches * PX_PER_INCH * times;
  const y = tall + 12;
  return [
    patch('lesson/clothPad', pad, 'ink', { shadow: 4, seam: 0, grain: null }),
    ...closeThreads(cloth, box, times),
    ...dimension([box.x, y], [box.x + rule, y], '', { ink: 'ink', size: 16 }),
    {
      kind: 'text',
      text: measure.text,
      x: box.x + rule + 10,
      y: y + 5.5,
      size: 16,
      ink: 'ink',
      anchor: 'start',
      bold: true,
    },
  ];
}
