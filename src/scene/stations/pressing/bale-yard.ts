import { textWidth } from '../../cloth/letter-widths.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { notchMarks } from '../../cloth/ruler.ts';
import type { Slot } from '../../cloth/slot-words.ts';
import { letter } from '../../cloth/slot-words.ts';
import { group, type Mark, type Stitch } from '../../display-list.ts';
import type { PressingInput, WeighedBale } from './pressing-input.ts';
import type { PressingLayout } from './pressing-layout.ts';

/** How many bales have been pressed after a share of the work. */
export const pressedBales = (bales: readonly WeighedBale[], progress: number): number =>
  Math.floor(bales.length * progress + 1e-9);

/** A bale lying down is so much longer than it is thick, as it is drawn here. */
const LONG_FOR_THICK = 1.6;
const GAP_SHARE = 0.16;
/** A bale of few is drawn no longer, px. */
const MOST_LONG_PX = 104;

/** Knots stand no closer, px. */
const LEAST_KNOT_PX = 4;

/** Rows of bales in a box: the largest that all fit. */
function cellsOf({ width, height }: Box, count: number): { readonly columns: number; readonly wide: number } {
  let columns = 1;
  while (Math.ceil(count / columns) * (width / columns / LONG_FOR_THICK) > height) columns++;
  return { columns, wide: Math.min(width / columns, MOST_LONG_PX) };
}

const boxOf = ({ yard }: PressingLayout, count: number, place: number, share: number): Box => {
  const { columns, wide } = cellsOf(yard, count);
  const tall = wide / LONG_FOR_THICK;
  const gap = wide * GAP_SHARE;
  return {
    x: yard.x + (place % columns) * wide + gap / 2,
    y: yard.y + Math.floor(place / columns) * tall + (gap * 0.8) / 2,
    width: (wide - gap) * share,
    height: tall - gap * 0.8,
  };
};

/** Share of the mark that a bale weighs, for its drawn length. */
const shareOf = ({ weight }: WeighedBale, wanted: number): number => Math.min(1.04, weight / wanted);

/** Chalk where bales will lie. */
export function yardStill({ bales, wanted }: PressingInput, layout: PressingLayout): Mark {
  const stitches = bales.flatMap((bale, i): Stitch[] => {
    const { x, y, width, height } = boxOf(layout, bales.length, i, shareOf(bale, wanted));
    return [
      [x, y + height, x + width, y + height],
      [x, y, x, y + height],
    ];
  });
  return { kind: 'stitches', stitches, ink: 'walnut', width: 1, flat: true };
}

/**
 * The bales pressed so far, one for one. A light last one is shorter, in another cloth, with fewer ties.
 * @returns those that lie there after a share of the work
 */
export function yardMarks({ bales, wanted, era }: PressingInput, layout: PressingLayout): (progress: number) => Mark[] {
  const lying = bales.map((bale, i): { cloth: Mark; ties: Stitch[] } => {
    const { x, y, width, height } = boxOf(layout, bales.length, i, shareOf(bale, wanted));
    const count = height > 13 ? (bale.remnant ? 3 : 6) : bale.remnant ? 1 : 3;
    return {
      cloth: patch(`pressing/yard${i}`, rectangle(x, y, width, height), bale.remnant ? 'blush' : 'lint', {
        shadow: height > 10 ? 2.6 : 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: Math.min(1, height * 0.05), snip: 60 },
      }),
      ties: Array.from({ length: count }, (_, tie): Stitch => {
        const at = x + (width * (tie + 0.5)) / count;
        return [at, y + 1, at, y + height - 1];
      }),
    };
  });
  return (progress) => {
    const here = lying.slice(0, pressedBales(bales, progress));
    const ties: Mark = {
      kind: 'stitches',
      stitches: here.flatMap((bale) => bale.ties),
      ink: era === 'thirties' ? 'iron' : 'madder',
      width: 1.6,
      flat: true,
    };
    return [group('bales', [...here.map(({ cloth }) => cloth), ties], here.length)];
  };
}

/** The scale of the ruler of weights. */
interface Scale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly x: (weight: number) => number;
}

function scaleOf({ bales, wanted }: PressingInput, box: Box): Scale {
  const whole = bales.filter(({ remnant }) => !remnant).map(({ weight }) => weight);
  const span = Math.max(...whole, wanted) - Math.min(...whole, wanted);
  const step = [1, 2, 5, 10, 20, 50].find((each) => span / each <= 5) ?? 100;
  const from = Math.floor((Math.min(...whole, wanted) - step * 0.25) / step) * step;
  const to = Math.ceil((Math.max(...whole, wanted) + step * 0.25) / step) * step;
  const room = box.width - 36;
  return { from, to, step, x: (weight) => box.x + 18 + ((weight - from) / (to - from)) * room };
}

/** A ruler of weights with a notch at the weight aimed at. */
export function weightsStill(input: PressingInput, { weights, small }: PressingLayout): Mark[] {
  if (!weights) return [];
  const { labels, wanted } = input;
  const scale = scaleOf(input, weights);
  const tall = small * 2.1;
  const top = weights.y + weights.height - tall;
  const marks: Mark[] = [
    patch('pressing/ruler', rectangle(weights.x, top, weights.width, tall), 'muslin', {
      shadow: 2.6,
      seam: 0,
      scissors: { miss: 1, snip: 120 },
    }),
  ];
  const ticks: Stitch[] = [];
  let free = weights.x;
  for (let weight = scale.from; weight <= scale.to + 1e-9; weight += scale.step) {
    const x = scale.x(weight);
    ticks.push([x, top + 2, x, top + tall * 0.3]);
    const text = labels.tick(weight);
    const wide = textWidth(text, small);
    if (x - wide / 2 < free || x + wide / 2 > weights.x + weights.width) continue;
    free = x + wide / 2 + 4;
    const slot: Slot = {
      x: x - wide,
      y: top + tall * 0.3,
      width: wide * 2,
      height: tall * 0.68,
      anchor: 'middle',
      stands: 'middle',
    };
    marks.push(...letter(text, slot, { size: small }));
  }
  marks.push({ kind: 'stitches', stitches: ticks, ink: 'ink', width: 1.6, flat: true });
  marks.push(...notchMarks('pressing/notch', [scale.x(wanted), top + 1], 'down', 'madder'));
  return marks;
}

/**
 * A knot for every whole bale over its weight, heaped where bales weigh alike.
 * @returns those of the bales pressed after a share of the work
 */
export function weightMarks(input: PressingInput, layout: PressingLayout): (progress: number) => Mark[] {
  const { weights, small } = layout;
  if (!weights) return () => [];
  const { bales } = input;
  const scale = scaleOf(input, weights);
  const floor = weights.y + weights.height - small * 2.1 - 14;
  const room = floor - weights.y - small * 1.18 * 2 - 10;
  const columnOf = (weight: number, px: number) => Math.floor(scale.x(weight) / px);
  const highest = (px: number): number => {
    const heaps = new Map<number, number>();
    for (const { weight, remnant } of bales)
      if (!remnant) heaps.set(columnOf(weight, px), (heaps.get(columnOf(weight, px)) ?? 0) + 1);
    return Math.max(1, ...heaps.values());
  };
  let px = small * 0.9;
  while (px > LEAST_KNOT_PX && highest(px) * px > room) px -= 0.5;
  const pitch = Math.min(px, room / highest(px));
  const heaps = new Map<number, number>();
  const knots = bales.map(({ weight, remnant }): Stitch | null => {
    if (remnant) return null;
    const column = columnOf(weight, px);
    const below = heaps.get(column) ?? 0;
    heaps.set(column, below + 1);
    const [x, y] = [(column + 0.5) * px, floor - (below + 0.5) * pitch];
    return [x, y, x, y];
  });
  const width = Math.max(2.6, Math.min(px, pitch) * 0.8);
  return (progress) => {
    const stitches = knots.slice(0, pressedBales(bales, progress)).flatMap((knot) => (knot ? [knot] : []));
    return [group('weights', [{ kind: 'stitches', stitches, ink: 'indigo', width, flat: true }], stitches.length)];
  };
}
