import { linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { letter } from '../../cloth/slot-words.ts';
import { group, type Mark } from '../../display-list.ts';
import type { PriceSlip } from './classing-input.ts';

interface SlipLayout {
  readonly inner: Box;
  readonly titleTall: number;
  readonly rowTall: number;
  readonly totalTall: number;
  readonly noteTall: number;
  readonly bars: boolean;
}

function laySlip({ lines, note }: PriceSlip, box: Box, text: number): SlipLayout {
  // Little room: no more than each line needs.
  const tight = box.height < text * 17;
  const pad = text * (tight ? 0.62 : 0.75);
  const inner: Box = {
    x: box.x + pad,
    y: box.y + pad * (tight ? 1 : 0.9),
    width: box.width - 2 * pad,
    height: box.height - pad * (tight ? 1.9 : 1.8),
  };
  const titleTall = text * (tight ? 1.2 : 1.5);
  const totalTall = Math.min(
    inner.height * (lines.length > 1 ? 0.38 : 0.5),
    text * (tight ? 3.5 : lines.length > 1 ? 4.4 : 7),
  );
  const noteTall =
    note === '' ? 0 : linesOf(note, text, inner.width, { italic: true }).length * text * 1.18 + text * 0.5;
  const left = inner.height - titleTall - totalTall - noteTall - 5;
  const rowTall = Math.min(left / lines.length, text * 2.6);
  return { inner, titleTall, rowTall, totalTall, noteTall, bars: rowTall > text * 1.75 && lines.length > 1 };
}

/** The slip of the price before a line is written on it. */
export function priceSlipStill(slip: PriceSlip, box: Box, text: number): Mark[] {
  const { inner, titleTall } = laySlip(slip, box, text);
  return [
    patch('classing/price', rectangle(box.x, box.y, box.width, box.height), 'muslin', {
      shadow: 4,
      seam: box.height < text * 17 ? 3 : 5,
      thread: 'indigo',
      scissors: { miss: 1.4, snip: 80 },
    }),
    ...letter(
      slip.title,
      { x: inner.x, y: inner.y, width: inner.width, height: titleTall, anchor: 'start', stands: 'middle' },
      { size: text, italic: true, ink: 'walnut' },
    ),
  ];
}

/**
 * The price as far as it is built: base, then each premium to the right and each discount to the left of where the price had
 * come, to one scale; at last the sum.
 * @param shown how many lines are written
 */
export function priceLines(slip: PriceSlip, box: Box, text: number, shown: number, summed: boolean): Mark[] {
  const { inner, titleTall, rowTall, totalTall, noteTall, bars } = laySlip(slip, box, text);
  const top = inner.y + titleTall;
  let sum = 0;
  const steps = slip.lines.slice(1).map(({ cents }) => {
    sum += cents;
    return sum;
  });
  const least = Math.min(0, ...steps);
  const most = Math.max(0, ...steps);
  const pxPerCent = most > least ? (inner.width - 8) / (most - least) : 0;
  const xOf = (cents: number) => inner.x + 4 + (cents - least) * pxPerCent;
  const marks: Mark[] = [];
  slip.lines.forEach(({ label, text: amount, cents }, i) => {
    const y = top + i * rowTall;
    const wordsTall = bars ? text * 1.25 : rowTall;
    const amountWide = Math.min(inner.width * 0.4, Math.max(4, amount.length) * text * 0.62);
    marks.push(
      ...letter(
        label,
        { x: inner.x, y, width: inner.width - amountWide - 6, height: wordsTall, anchor: 'start', stands: 'middle' },
        { size: text, ink: i < shown ? 'ink' : 'walnut' },
      ),
    );
    // What is still to come stands there by name, over a thread to write on.
    if (i >= shown) {
      marks.push(thread(inner.x + inner.width - amountWide, y + wordsTall - 3, amountWide));
      return;
    }
    marks.push(
      ...letter(
        amount,
        {
          x: inner.x + inner.width - amountWide,
          y,
          width: amountWide,
          height: wordsTall,
          anchor: 'end',
          stands: 'middle',
        },
        { size: text, bold: true, ink: cents < 0 ? 'madder' : 'ink' },
      ),
    );
    if (bars) marks.push(...barMarks(`classing/bar${i}`, i, steps, y + wordsTall + 1, rowTall - wordsTall - 4, xOf));
  });
  const y = inner.y + inner.height - totalTall;
  if (!summed) return [...marks, thread(inner.x, y, inner.width), thread(inner.x, y + totalTall, inner.width)];
  return [
    ...marks,
    group('price', [
      patch('classing/total', rectangle(inner.x - 2, y, inner.width + 4, totalTall), 'weld', {
        shadow: 2.6,
        seam: 4,
        thread: 'ink',
        scissors: { miss: 1, snip: 70 },
      }),
      ...letter(
        slip.total,
        {
          x: inner.x + 7,
          y: y + 4,
          width: inner.width - 14,
          height: totalTall * 0.56 - 4,
          anchor: 'middle',
          stands: 'middle',
        },
        { size: totalTall * 0.46, display: true },
      ),
      ...letter(
        slip.value,
        {
          x: inner.x + 7,
          y: y + totalTall * 0.55,
          width: inner.width - 14,
          height: totalTall * 0.45 - 5,
          anchor: 'middle',
          stands: 'middle',
        },
        { size: text, bold: true },
      ),
    ]),
    ...letter(
      slip.note,
      {
        x: inner.x,
        y: top + rowTall * slip.lines.length,
        width: inner.width,
        height: noteTall,
        anchor: 'start',
        stands: 'middle',
      },
      { size: text, italic: true, ink: 'walnut' },
    ),
  ];
}

/** A basted thread where something will be written. */
const thread = (x: number, y: number, wide: number): Mark => ({
  kind: 'stitches',
  stitches: Array.from({ length: Math.max(1, Math.floor(wide / 9)) }, (_, i) => [x + i * 9, y, x + i * 9 + 5, y]),
  ink: 'walnut',
  width: 1.2,
  flat: true,
});

/** One step of the price: from where it was to where it comes; the base is the line they start from. */
function barMarks(
  name: string,
  i: number,
  steps: readonly number[],
  y: number,
  tall: number,
  xOf: (cents: number) => number,
): Mark[] {
  const base = xOf(0);
  const chalk: Mark = {
    kind: 'stitches',
    stitches: [[base, y - 2, base, y + tall + 3]],
    ink: 'walnut',
    width: 1.4,
    flat: true,
  };
  if (i === 0) return [chalk];
  const from = xOf(steps[i - 2] ?? 0);
  const to = xOf(steps[i - 1]!);
  if (Math.abs(to - from) < 1)
    return [chalk, { kind: 'stitches', stitches: [[from, y, from, y + tall]], ink: 'ink', width: 2.2, flat: true }];
  const up = to > from;
  const left = Math.min(from, to);
  const wide = Math.abs(to - from);
  return [
    chalk,
    patch(name, rectangle(left, y, wide, tall), up ? 'leafGreen' : 'madder', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    // Down is crossed, up is plain: not by colour alone.
    ...(up
      ? []
      : [
          {
            kind: 'stitches' as const,
            stitches: runningStitches(
              [
                [left + 2, y + tall / 2],
                [left + wide - 2, y + tall / 2],
              ],
              name,
              {
                on: 4,
                off: 3,
                closed: false,
              },
            ),
            ink: 'thread' as const,
            width: 1.6,
          },
        ]),
  ];
}
