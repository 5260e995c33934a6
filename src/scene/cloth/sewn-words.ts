import type { InkName } from '../../style/inks.ts';
import type { Mark, ShadowPx, TextMark } from '../display-list.ts';
import { patch } from './patch.ts';
import { type Box, rectangle } from './point.ts';

/** Letters by their width in the text face, as a share of the size; measured in it, rounded up. */
const widthsOfLetters: readonly (readonly [letters: string, width: number])[] = [
  [' \u00a0', 0.19],
  ["ijlíI.,:;'!|", 0.3],
  ['fJ/()-°¿?', 0.33],
  ['crst', 0.43],
  ['mMwW%', 0.9],
  ['ABDGHKNOQRUVXÁÑÓÚ', 0.7],
];
/** Every other letter, and all digits. */
const COMMON_WIDTH = 0.56;
const widths = new Map(widthsOfLetters.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width])));
const LINE_HEIGHT = 1.18;
/** A line's part above its baseline, as a share of its size. */
const ASCENT = 0.86;
/** Nothing is lettered smaller than this while it can be helped, px: on a phone a little less, where all words are small. */
const leastPx = (wanted: number): number => (wanted >= 14 ? 14 : Math.min(13, wanted));
/** Words that are far too long shrink down to this share of what was wanted, and no further. */
const LEAST_SHARE = 0.45;

/** Room that a line of words takes, px; a little more than it does. */
function wordWidth(text: string, size: number): number {
  let width = 0;
  for (const letter of text) width += widths.get(letter) ?? COMMON_WIDTH;
  return width * size;
}

/** Words broken into lines no wider than a width, px. A word that is wider stays whole; held spaces do not break. */
export function linesOf(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && wordWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Where words may lie, and to which side of it they keep. */
export interface Slot extends Box {
  readonly anchor: 'start' | 'middle' | 'end';
  /** Whether they hang from its top, keep to its middle or stand on its floor. */
  readonly stands: 'top' | 'middle' | 'bottom';
}

export const slotIn = (box: Box, anchor: Slot['anchor'] = 'start', stands: Slot['stands'] = 'top'): Slot => ({
  ...box,
  anchor,
  stands,
});

export interface WordStyle {
  /** Wanted size, px; it shrinks only where the words would not fit. */
  readonly size: number;
  readonly ink?: InkName;
  readonly bold?: boolean;
  readonly italic?: boolean;
}

/** Lines of one style, broken to fit. */
interface Lines {
  readonly lines: readonly string[];
  readonly style: WordStyle;
}

const widthOf = ({ lines, style }: Lines): number => Math.max(...lines.map((line) => wordWidth(line, style.size)));
const heightOf = ({ lines, style }: Lines): number => lines.length * style.size * LINE_HEIGHT;

/** Paragraphs broken and, where they must be, shrunk: first each to the least size, then on together. */
function fitted(paragraphs: readonly (readonly [text: string, style: WordStyle])[], { width, height }: Box): Lines[] {
  let share = 1;
  let below = 1;
  const at = (): Lines[] =>
    paragraphs.map(([text, style]) => {
      const size = Math.max(leastPx(style.size), style.size * share) * below;
      return { lines: linesOf(text, size, width), style: { ...style, size } };
    });
  let all = at();
  const over = () =>
    Math.max(...all.map(widthOf)) > width || all.reduce((sum, each) => sum + heightOf(each), 0) > height;
  while (over() && below > LEAST_SHARE) {
    if (share > LEAST_SHARE && all.some(({ style }, i) => style.size > leastPx(paragraphs[i]![1].size))) share *= 0.96;
    else below *= 0.96;
    all = at();
  }
  return all;
}

/** Lays lines into a slot: their marks, and the box they fill. */
function laid(all: readonly Lines[], slot: Slot): { readonly marks: TextMark[]; readonly box: Box } {
  const width = Math.max(...all.map(widthOf));
  const height = all.reduce((sum, each) => sum + heightOf(each), 0);
  const spareX = slot.width - width;
  const spareY = Math.max(0, slot.height - height);
  const left = slot.x + (slot.anchor === 'start' ? 0 : slot.anchor === 'end' ? spareX : spareX / 2);
  const top = slot.y + (slot.stands === 'bottom' ? spareY : slot.stands === 'middle' ? spareY / 2 : 0);
  const x = slot.anchor === 'start' ? left : slot.anchor === 'end' ? left + width : left + width / 2;
  let y = top;
  const marks = all.flatMap(({ lines, style }) =>
    lines.map((text): TextMark => {
      const baseline = y + style.size * ASCENT;
      y += style.size * LINE_HEIGHT;
      return {
        kind: 'text',
        text,
        x,
        y: baseline,
        size: style.size,
        ink: style.ink ?? 'ink',
        anchor: slot.anchor,
        ...(style.bold ? { bold: true } : {}),
        ...(style.italic ? { italic: true } : {}),
      };
    }),
  );
  return { marks, box: { x: left, y: top, width, height } };
}

/** Words in a slot, on whatever lies beneath. */
export const words = (text: string, slot: Slot, style: WordStyle): Mark[] =>
  text === '' ? [] : laid(fitted([[text, style]], slot), slot).marks;

/** Room between words and the edge of their slip, px. */
const PAD_X = 6;
const PAD_Y = 2.5;

export interface SlipStyle {
  readonly cloth?: InkName;
  readonly shadow?: ShadowPx;
}

/** Paragraphs on a slip of cloth cut to fit them; the slot holds the slip. */
function onSlip(
  name: string,
  paragraphs: readonly (readonly [string, WordStyle])[],
  slot: Slot,
  { cloth = 'muslin', shadow = 1.2 }: SlipStyle,
): Mark[] {
  const inner: Slot = {
    ...slot,
    x: slot.x + PAD_X,
    y: slot.y + PAD_Y,
    width: slot.width - 2 * PAD_X,
    height: slot.height - 2 * PAD_Y,
  };
  const { marks, box } = laid(fitted(paragraphs, inner), inner);
  return [
    patch(
      `${name}/slip`,
      rectangle(box.x - PAD_X, box.y - PAD_Y, box.width + 2 * PAD_X, box.height + 2 * PAD_Y),
      cloth,
      { shadow, seam: 0, grain: null, scissors: { miss: 0.9, snip: 60, bow: 0.004 } },
    ),
    ...marks,
  ];
}

/** Words on a slip of muslin. */
export const slip = (name: string, text: string, slot: Slot, style: WordStyle, cloth: SlipStyle = {}): Mark[] =>
  text === '' ? [] : onSlip(name, [[text, style]], slot, cloth);

/** A name with its amount in bold under it, on one slip. */
export const tag = (
  name: string,
  { text, amount }: { readonly text: string; readonly amount: string },
  slot: Slot,
  size: number,
  cloth: SlipStyle = {},
): Mark[] =>
  onSlip(
    name,
    [
      [text, { size }],
      [amount, { size: size * 1.2, bold: true }],
    ],
    slot,
    cloth,
  );
