import type { InkName } from '../../style/inks.ts';
import type { Mark, Point, TextMark } from '../display-list.ts';
import { patch } from './patch.ts';
import { type Box, rectangle } from './point.ts';

/**
 * Widths of letters as shares of their size, measured on the bold of the text face and rounded up, by groups; all others are of
 * the ordinary width. Figures are tabular.
 */
const letterGroups: readonly (readonly [letters: string, width: number])[] = [
  [' \u00a0', 0.18],
  ["iíjlI.,:;’'|·", 0.34],
  ['frt()-–/°', 0.4],
  ['mM', 0.89],
  ['wW%—', 0.99],
  ['ABDGHKNOQRUVÁÉÍÓÚÑ&', 0.78],
];
const ORDINARY_WIDTH = 0.59;
const widths = new Map(
  letterGroups.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width] as const)),
);
const LINE_HEIGHT = 1.18;
/** A line's part above its baseline, as a share of its size. */
const ASCENT = 0.82;

/** The italic runs narrower. */
const ITALIC_WIDTH = 0.92;

/** Width of a line of words, px: a little more than it will take. */
export function textWidth(text: string, size: number, italic = false): number {
  let width = 0;
  for (const letter of text) width += widths.get(letter) ?? ORDINARY_WIDTH;
  return width * size * (italic ? ITALIC_WIDTH : 1);
}

/** An amount is this much larger than the name above it. */
const AMOUNT_SIZE = 1.3;
/** Height of a tag whose name takes so many lines, px. */
export const tagHeight = (size: number, lines = 1): number =>
  size * LINE_HEIGHT * (lines + AMOUNT_SIZE) + 2 * PAD_Y + 0.5;

/** Where words may lie, and to which side of it they keep. */
export interface Slot extends Box {
  readonly anchor: 'start' | 'middle' | 'end';
  /** Whether they stand on the slot's floor, hang from its top (the rule) or keep to its middle. */
  readonly stands?: 'top' | 'middle' | 'bottom';
}

export const slotAt = (
  x: number,
  y: number,
  width: number,
  height: number,
  anchor: Slot['anchor'] = 'start',
  stands: NonNullable<Slot['stands']> = 'top',
): Slot => ({ x, y, width, height, anchor, stands });

export interface Lettering {
  /** Wanted size, px; it shrinks only where the words would not fit. */
  readonly size: number;
  readonly ink?: InkName;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly display?: boolean;
}

/** Words broken into lines no wider than a width, greedily. A word that is wider stays whole. */
export function linesOf(text: string, size: number, width: number, italic = false): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size, italic) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

interface Fitted {
  readonly lines: readonly string[];
  readonly size: number;
  readonly box: Box;
}

/** Lines and size with which words fit a slot. */
function fitted(text: string, slot: Slot, wanted: number, italic = false): Fitted {
  let size = wanted;
  let lines = linesOf(text, size, slot.width, italic);
  const over = () => lines.length * size * LINE_HEIGHT > slot.height || widest(lines, size, italic) > slot.width;
  while (size > wanted * 0.4 && over()) {
    size *= 0.96;
    lines = linesOf(text, size, slot.width, italic);
  }
  const width = widest(lines, size, italic);
  const height = lines.length * size * LINE_HEIGHT;
  const spareX = slot.width - width;
  const spareY = Math.max(0, slot.height - height);
  const x = slot.x + (slot.anchor === 'start' ? 0 : slot.anchor === 'end' ? spareX : spareX / 2);
  const y = slot.y + (slot.stands === 'bottom' ? spareY : slot.stands === 'middle' ? spareY / 2 : 0);
  return { lines, size, box: { x, y, width, height } };
}

const widest = (lines: readonly string[], size: number, italic: boolean): number =>
  Math.max(...lines.map((line) => textWidth(line, size, italic)));

/** Words in a slot, on whatever lies beneath. */
export function letter(text: string, slot: Slot, style: Lettering): Mark[] {
  if (text === '') return [];
  return lettered(fitted(text, slot, style.size, style.italic), slot, style);
}

function lettered({ lines, size, box }: Fitted, slot: Slot, style: Lettering): TextMark[] {
  const x = slot.anchor === 'start' ? box.x : slot.anchor === 'end' ? box.x + box.width : box.x + box.width / 2;
  return lines.map((text, i) => ({
    kind: 'text',
    text,
    x,
    y: box.y + size * (ASCENT + LINE_HEIGHT * i),
    size,
    ink: style.ink ?? 'ink',
    anchor: slot.anchor,
    ...(style.bold ? { bold: true } : {}),
    ...(style.italic ? { italic: true } : {}),
    ...(style.display ? { display: true } : {}),
  }));
}

/** Room between words and the edge of their slip, px. */
const PAD_X = 6;
const PAD_Y = 3;

/** Words on a slip of cloth of their own, no larger than they need; the slot holds the slip. */
export function slip(name: string, text: string, slot: Slot, style: Lettering, pad: InkName = 'muslin'): Mark[] {
  if (text === '') return [];
  const inner: Slot = {
    ...slot,
    x: slot.x + PAD_X,
    y: slot.y + PAD_Y,
    width: slot.width - 2 * PAD_X,
    height: slot.height - 2 * PAD_Y,
  };
  const held = fitted(text, inner, style.size, style.italic);
  const { x, y, width, height } = held.box;
  return [
    patch(`${name}/slip`, rectangle(x - PAD_X, y - PAD_Y, width + 2 * PAD_X, height + 2 * PAD_Y), pad, {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 1, snip: 60 },
    }),
    ...lettered(held, inner, style),
  ];
}

/** A name with its amount under it in bold, on one slip. */
export function tag(name: string, words: { text: string; amount: string }, slot: Slot, size: number): Mark[] {
  const inner: Slot = {
    ...slot,
    x: slot.x + PAD_X,
    width: slot.width - 2 * PAD_X,
    y: slot.y + PAD_Y,
    height: slot.height - 2 * PAD_Y,
  };
  const amountTall = size * AMOUNT_SIZE * LINE_HEIGHT;
  const named = fitted(words.text, { ...inner, stands: 'top', height: inner.height - amountTall }, size);
  const numbered = fitted(words.amount, { ...inner, stands: 'top', y: 0, height: amountTall }, size * AMOUNT_SIZE);
  const width = Math.max(named.box.width, numbered.box.width);
  const height = named.box.height + numbered.box.height;
  const spareX = inner.width - width;
  const spareY = Math.max(0, inner.height - height);
  const x = inner.x + (slot.anchor === 'start' ? 0 : slot.anchor === 'end' ? spareX : spareX / 2);
  const y = inner.y + (slot.stands === 'bottom' ? spareY : slot.stands === 'middle' ? spareY / 2 : 0);
  const at = (held: Fitted, top: number): Fitted => ({ ...held, box: { x, y: top, width, height } });
  return [
    patch(`${name}/slip`, rectangle(x - PAD_X, y - PAD_Y, width + 2 * PAD_X, height + 2 * PAD_Y), 'muslin', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 1, snip: 60 },
    }),
    ...lettered(at(named, y), slot, { size }),
    ...lettered(at(numbered, y + named.box.height), slot, { size, bold: true }),
  ];
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
