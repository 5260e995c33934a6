import { textWidth } from '../../cloth/letter-widths.ts';
import { lettered, linesHeight } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { notchMarks } from '../../cloth/ruler.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark, type Stitch } from '../../display-list.ts';

/** A tailor's tape on which the heat of the season is laid out, day by day. */
export interface HeatTape {
  /** Heat since planting at the tape's right end, DD60. */
  readonly toDd60: number;
  /** One tick for so much heat, DD60. */
  readonly tickDd60: number;
  /** Stages of the plant: the heat they came at, and their names. */
  readonly stages: readonly { readonly dd60: number; readonly text: string }[];
}

/** The laid-out part of the tape lies in the upper share of it, with the sum on it; the stages stand below. */
const LAID = 0.5;

const xOf = (tape: HeatTape, box: Box, dd60: number): number =>
  box.x + (box.width * Math.min(tape.toDd60, Math.max(0, dd60))) / tape.toDd60;

/** The bare tape: muslin, a tick for each hundred, a notch and a name for each stage. */
export function heatTapeMarks(tape: HeatTape, box: Box, textPx: number): Mark[] {
  const ticks: Stitch[] = [];
  for (let dd60 = tape.tickDd60; dd60 < tape.toDd60; dd60 += tape.tickDd60) {
    const x = xOf(tape, box, dd60);
    ticks.push([x, box.y + 2, x, box.y + box.height * LAID * 0.4]);
  }
  const marks: Mark[] = [
    patch('heat/tape', rectangle(box.x, box.y, box.width, box.height), 'muslin', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 160, bow: 0.0006 },
    }),
    { kind: 'stitches', stitches: ticks, ink: 'walnut', width: 1.3, flat: true },
  ];
  const wordsPx = Math.min(17, Math.max(box.width < 460 ? 13 : 14, textPx * 0.85));
  const baseline = box.y + box.height * LAID + linesHeight(0.84, wordsPx);
  const places = tape.stages.map(({ dd60 }) => xOf(tape, box, dd60));
  let free = box.x + 4;
  for (const [i, { text }] of tape.stages.entries()) {
    const x = places[i]!;
    marks.push(...notchMarks(`heat/stage${i}`, [x, box.y + box.height * LAID + 8], 'down', 'madder'));
    const width = textWidth(text, wordsPx, { bold: true });
    const next = (places[i + 1] ?? box.x + box.width - 2) - 7;
    // A name ends at its notch, or begins there; where neither has room, the notch stands alone.
    const before = x - 9 - width >= free;
    if (!before && x + 9 + width > next) {
      free = x + 7;
      continue;
    }
    const look = { anchor: before ? 'end' : 'start', italic: true } as const;
    marks.push(...lettered([text], [before ? x - 9 : x + 9, baseline], { size: wordsPx, ink: 'ink', ...look }));
    free = before ? x + 7 : x + 9 + width + 7;
  }
  return marks;
}

/** What is laid out by now, with the sum on it, and a pin at its end. */
export function heatLaidMarks(
  tape: HeatTape,
  box: Box,
  now: { readonly dd60: number; readonly text: string; readonly short: string },
  textPx: number,
): Mark {
  const x = xOf(tape, box, now.dd60);
  const depth = box.height * LAID;
  const long = x - box.x;
  const right = box.x + box.width - 6;
  // Before the pin where there is room, else after it; on a narrow tape the sum is said in fewer words.
  const room = (text: string) => textWidth(text, textPx, { bold: true }) + textPx;
  const text = room(now.text) < Math.max(long, right - x) ? now.text : now.short;
  const onCloth = long > room(text);
  const before = Math.min(right, x - textPx * 0.5);
  const wide = textWidth(text, textPx, { bold: true });
  const marks: Mark[] = [];
  if (long > 2)
    marks.push(
      patch('heat/laid', rectangle(box.x, box.y, long, depth), 'weld', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.4, snip: 160, bow: 0.0006 },
      }),
    );
  // The rows of basting end where the sum begins.
  const basted = onCloth ? before - wide - textPx * 0.6 : x - 5;
  if (basted - box.x > 24)
    marks.push({
      kind: 'stitches',
      stitches: [0.16, 0.84].flatMap((share, i) =>
        runningStitches(
          [
            [box.x + 6, box.y + depth * share],
            [basted, box.y + depth * share],
          ],
          `heat/row${i}`,
          { on: 8, off: 7, closed: false },
        ),
      ),
      ink: 'walnut',
      width: 1.3,
    });
  // On the bare tape the sum lies on a piece of its own, so that no tick runs through it.
  if (!onCloth)
    marks.push(
      patch('heat/sum', rectangle(x, box.y + 1, wide + textPx, depth - 2), 'muslin', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
    );
  marks.push(
    {
      kind: 'stitches',
      stitches: [[x, box.y - textPx * 0.35, x, box.y + depth + 3]],
      ink: 'madder',
      width: 3,
      flat: true,
    },
    {
      kind: 'text',
      text,
      x: onCloth ? before : x + textPx * 0.5,
      y: box.y + depth / 2 + textPx * 0.34,
      size: textPx,
      ink: 'ink',
      anchor: onCloth ? 'end' : 'start',
      bold: true,
    },
  );
  return group('heatSum', marks, Math.round(now.dd60));
}
