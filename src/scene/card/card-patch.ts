import { type Box, rectangle } from '../cloth/point.ts';
import { chalkRule } from '../cloth/ruler.ts';
import { letter, slotIn } from '../cloth/slot-words.ts';
import type { Mark } from '../display-list.ts';
import { cutPatch, grainArrow } from '../stations/sewing/cut-patch.ts';
import type { SeasonCard } from './season-card.ts';

/** CSS px on an inch of paper. */
const pxPerInch = 96;
/** Room under the patch for its ruler and a line of words, px. */
const foot = 48;
/** A column that the figures beside it leave, px, and the least that the words under it need. */
const widestPx = 440;
const leastWidthPx = 350;

/** The patch with what belongs to it, and the room it takes, px. */
export interface CardPatch {
  readonly marks: Mark[];
  readonly width: number;
  readonly height: number;
}

/** The patch that one boll made, at true size where the page has room for it, with a ruler to check the print by. */
export function cardPatch(made: NonNullable<SeasonCard['patch']>, said: SeasonCard['size'], box: Box): CardPatch {
  const room = Math.min(widestPx, box.height - foot);
  const isTrue = made.inches * pxPerInch <= room;
  const scale = isTrue ? pxPerInch : pxPerInch / 2;
  const side = Math.min(room, made.inches * scale);
  const { x, y } = box;
  const ruler = y + side + 12;
  const markPx = said.markInches * scale;
  const ticks = Array.from({ length: Math.floor((2 * side) / markPx) + 1 }, (_, i) =>
    i % 2 === 0 ? { at: (i / 2) * markPx, text: String(i / 2) } : { at: (i / 2) * markPx },
  );
  const seam = made.seamInches * scale;
  const width = Math.max(leastWidthPx, side);
  const arrowX = x + side - seam - 20;
  const note = isTrue ? said.trueSize : said.halfSize;
  return {
    width,
    height: side + foot,
    marks: [
      ...cutPatch('card/patch', { x, y, width: side, height: side }, seam, made.cloth),
      // White cloth on a white page, and any cloth in a black and white print, still needs its edge.
      {
        kind: 'stitches',
        stitches: rectangle(x, y, side, side).map((from, i, corners) => [...from, ...corners[(i + 1) % 4]!] as const),
        ink: 'walnut',
        width: 1,
        flat: true,
      },
      grainArrow([arrowX, y + seam + 14], [arrowX, y + Math.min(seam + 90, side - seam - 14)], 'ink'),
      ...chalkRule([x, ruler], side, ticks, { direction: 'right', ink: 'ink', size: 12 }),
      ...letter(note, slotIn({ x, y: ruler + 24, width, height: 18 }), { size: 13, italic: true }),
    ],
  };
}
