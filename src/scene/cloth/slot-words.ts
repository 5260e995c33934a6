import type { InkName } from '../../style/inks.ts';
import type { Mark, Point, ShadowPx, TextMark } from '../display-list.ts';
import { type Look, textWidth } from './letter-widths.ts';
import { type Lettering, lettered, linesHeight, linesOf } from './lettering.ts';
import { patch } from './patch.ts';
import { type Box, rectangle } from './point.ts';

/** A line's part above its baseline, as a share of its size. */
const ASCENT = 0.84;
/** An amount is this much larger than the name above it. */
const AMOUNT_SIZE = 1.26;
/** Room between words and the edge of their slip, px. */
const PAD_X = 6;
const PAD_Y = 3;
/** Nothing is lettered smaller than this while it can be helped, px: on a phone a little less, where all words are small. */
const leastPx = (wanted: number): number => (wanted >= 14 ? 14 : Math.min(13, wanted));
/** A slot cut to its words may be narrower than they by what adding up rounds off. */
const ROUNDING_PX = 0.01;
/** Words that are far too long shrink down to this share of what was wanted, and no further. */
const LEAST_SHARE = 0.4;

/** Where words may lie, and to which side of it they keep. */
export interface Slot extends Box {
  readonly anchor: TextMark['anchor'];
  /** Whether they hang from its top, keep to its middle or stand on its floor. */
  readonly stands: 'top' | 'middle' | 'bottom';
}

export const slotIn = (box: Box, anchor: Slot['anchor'] = 'start', stands: Slot['stands'] = 'top'): Slot => ({
  ...box,
  anchor,
  stands,
});

export const slotAt = (
  x: number,
  y: number,
  width: number,
  height: number,
  anchor: Slot['anchor'] = 'start',
  stands: Slot['stands'] = 'top',
): Slot => ({ x, y, width, height, anchor, stands });

/** How words look in a slot. The size is the wanted one, px: it shrinks only where they would not fit. */
export type WordStyle = Omit<Lettering, 'anchor'>;
type Paragraph = readonly [text: string, style: WordStyle];

/** Lines of one style, broken to fit. */
interface Lines {
  readonly lines: readonly string[];
  readonly style: WordStyle;
}

const widthOf = ({ lines, style }: Lines): number =>
  Math.max(...lines.map((line) => textWidth(line, style.size, style)));
const heightOf = ({ lines, style }: Lines): number => linesHeight(lines.length, style.size);
const heightOfAll = (all: readonly Lines[]): number => all.reduce((sum, each) => sum + heightOf(each), 0);

/** Paragraphs broken and, where they must be, shrunk: first each to the least size, then on together. */
function fitted(paragraphs: readonly Paragraph[], { width, height }: Box): Lines[] {
  let share = 1;
  let below = 1;
  const at = (): Lines[] =>
    paragraphs.map(([text, style]) => {
      const size = Math.max(leastPx(style.size), style.size * share) * below;
      return { lines: linesOf(text, size, width, style), style: { ...style, size } };
    });
  let all = at();
  const over = () => Math.max(...all.map(widthOf)) > width + ROUNDING_PX || heightOfAll(all) > height + ROUNDING_PX;
  while (over() && below > LEAST_SHARE) {
    if (all.some(({ style }, i) => style.size > leastPx(paragraphs[i]![1].size))) share *= 0.96;
    else below *= 0.96;
    all = at();
  }
  return all;
}

/** Lays lines into a slot: their marks, and the box they fill. */
function laid(all: readonly Lines[], slot: Slot): { readonly marks: TextMark[]; readonly box: Box } {
  const width = Math.max(...all.map(widthOf));
  const height = heightOfAll(all);
  const spareX = slot.width - width;
  const spareY = Math.max(0, slot.height - height);
  const left = slot.x + (slot.anchor === 'start' ? 0 : slot.anchor === 'end' ? spareX : spareX / 2);
  const top = slot.y + (slot.stands === 'bottom' ? spareY : slot.stands === 'middle' ? spareY / 2 : 0);
  const x = slot.anchor === 'start' ? left : slot.anchor === 'end' ? left + width : left + width / 2;
  let y = top;
  const marks = all.flatMap((each) => {
    const { lines, style } = each;
    const written = lettered(lines, [x, y + style.size * ASCENT], { ...style, anchor: slot.anchor });
    y += heightOf(each);
    return written;
  });
  return { marks, box: { x: left, y: top, width, height } };
}

/** Words in a slot, on whatever lies beneath. */
export const letter = (text: string, slot: Slot, style: WordStyle): TextMark[] =>
  text === '' ? [] : laid(fitted([[text, style]], slot), slot).marks;

export interface SlipStyle {
  readonly cloth?: InkName;
  readonly shadow?: ShadowPx;
}

/** The slip itself, around the box of its words. */
const slipCloth = (name: string, words: Box, { cloth = 'muslin', shadow = 1.2 }: SlipStyle): Mark =>
  patch(
    `${name}/slip`,
    rectangle(words.x - PAD_X, words.y - PAD_Y, words.width + 2 * PAD_X, words.height + 2 * PAD_Y),
    cloth,
    { shadow, seam: 0, grain: null, scissors: { miss: 0.9, snip: 60, bow: 0.004 } },
  );

/** Paragraphs on a slip of cloth cut to fit them; the slot holds the slip. */
function onSlip(name: string, paragraphs: readonly Paragraph[], slot: Slot, cloth: SlipStyle): Mark[] {
  const inner: Slot = {
    ...slot,
    x: slot.x + PAD_X,
    y: slot.y + PAD_Y,
    width: slot.width - 2 * PAD_X,
    height: slot.height - 2 * PAD_Y,
  };
  const { marks, box } = laid(fitted(paragraphs, inner), inner);
  return [slipCloth(name, box, cloth), ...marks];
}

/** Words on a slip of cloth of their own, no larger than they need. */
export const slip = (name: string, text: string, slot: Slot, style: WordStyle, cloth: SlipStyle = {}): Mark[] =>
  text === '' ? [] : onSlip(name, [[text, style]], slot, cloth);

/** A name with its amount in bold under it, on one slip. */
export const tag = (
  name: string,
  { text, amount }: { readonly text: string; readonly amount: string },
  slot: Slot,
  size: number,
): Mark[] =>
  onSlip(
    name,
    [
      [text, { size }],
      [amount, { size: size * AMOUNT_SIZE, bold: true }],
    ],
    slot,
    {},
  );

/** Height of a tag whose name takes so many lines, px. */
export const tagHeight = (size: number, lines = 1): number => linesHeight(lines + AMOUNT_SIZE, size) + 2 * PAD_Y + 0.5;

/** Height of a slip that holds some words, broken at its width, px. */
export const slipHeight = (text: string, size: number, width: number, look: Look = {}): number =>
  linesHeight(linesOf(text, size, width - 2 * PAD_X, look).length, size) + 2 * PAD_Y;

/** Width of a slip that holds some words on one line, px. */
export const slipWidth = (text: string, size: number, look: Look = {}): number =>
  textWidth(text, size, look) + 2 * PAD_X;

/**
 * Words of their wanted size on a slip that hangs from a point.
 * @param at left end, middle or right end of its top edge, by the anchor; moved where `within` would be overstepped
 */
export function slipAt(
  name: string,
  text: string,
  at: Point,
  style: Lettering & { readonly width?: number; readonly within?: readonly [left: number, right: number] },
): Mark[] {
  const { size, anchor = 'start', width = Number.POSITIVE_INFINITY, within } = style;
  const lines = linesOf(text, size, width - 2 * PAD_X, style);
  const wide = widthOf({ lines, style }) + 2 * PAD_X;
  const wished = anchor === 'start' ? at[0] : anchor === 'end' ? at[0] - wide : at[0] - wide / 2;
  const x = within ? Math.max(within[0], Math.min(wished, within[1] - wide)) : wished;
  const slot = slotAt(x, at[1], wide, linesHeight(lines.length, size) + 2 * PAD_Y, anchor);
  return onSlip(name, [[text, style]], slot, {});
}

/** A thin line from words to the thing they name, with a knot at its end. */
export const leader = (from: Point, to: Point, ink: InkName = 'ink'): Mark => ({
  kind: 'stitches',
  stitches: [
    [from[0], from[1], to[0], to[1]],
    [to[0] - 1, to[1], to[0] + 1, to[1]],
  ],
  ink,
  width: 1.3,
  flat: true,
});
