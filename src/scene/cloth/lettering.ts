import type { InkName } from '../../style/inks.ts';
import type { Mark, Point } from '../display-list.ts';
import { patch } from './patch.ts';
import { rectangle } from './point.ts';

/** Mean advance of a letter as a share of its size: with slack for laying out, and near the truth for a slip that fits. */
const LETTER_WIDE = 0.55;
const LETTER_SNUG = 0.45;
const LINE_TALL = 1.18;

/** Room that a line of words may take, px. */
export const textWidth = (text: string, size: number): number => text.length * size * LETTER_WIDE;

/** Height of some lines, px. */
export const linesHeight = (lines: number, size: number): number => lines * size * LINE_TALL;

/** Height of a slip that holds some words, px. */
export const slipHeight = (text: string, size: number, width: number): number =>
  linesHeight(linesOf(text, size, width - size).length, size) + size * 0.42;

/** Breaks words into lines no wider than a width, px; a word wider than that stands alone. Held spaces do not break. */
export function linesOf(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

export interface Lettering {
  readonly size: number;
  readonly ink: InkName;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly display?: boolean;
  /** Lines break at this width, px; left out, they do not. */
  readonly width?: number;
}

/** Words on one or more lines. @param at the first baseline, at the anchor's side */
export function lettered(text: string, at: Point, style: Lettering): Mark[] {
  const { size, ink, anchor = 'start', bold, italic, display, width } = style;
  const lines = width === undefined ? [text] : linesOf(text, size, width);
  return lines.map((line, i) => ({
    kind: 'text',
    text: line,
    x: at[0],
    y: at[1] + i * size * LINE_TALL,
    size,
    ink,
    anchor,
    ...(bold ? { bold } : {}),
    ...(italic ? { italic } : {}),
    ...(display ? { display } : {}),
  }));
}

/**
 * Words on a slip of muslin that is cut to fit them.
 * @param at left end, middle or right end of the slip's top edge, by the anchor; moved where `within` would be overstepped
 */
export function slip(
  name: string,
  text: string,
  at: Point,
  style: Omit<Lettering, 'ink'> & { ink?: InkName; within?: readonly [left: number, right: number] },
): Mark[] {
  const { size, anchor = 'start', width } = style;
  const lines = width === undefined ? [text] : linesOf(text, size, width - size);
  const wide = Math.max(...lines.map((line) => line.length)) * size * LETTER_SNUG + size;
  const tall = linesHeight(lines.length, size) + size * 0.42;
  const wished = anchor === 'start' ? at[0] : anchor === 'end' ? at[0] - wide : at[0] - wide / 2;
  // Held between two edges with the slack of a wide face on both sides.
  const slack = Math.max(...lines.map((line) => textWidth(line, size))) - wide + size;
  const [least, most] = style.within ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const left = Math.max(least + slack / 2, Math.min(wished, most - wide - slack / 2));
  const x = anchor === 'start' ? left + size * 0.5 : anchor === 'end' ? left + wide - size * 0.5 : left + wide / 2;
  return [
    patch(`${name}/slip`, rectangle(left, at[1], wide, tall), 'muslin', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.9, snip: 60, bow: 0.004 },
    }),
    ...lines.flatMap((line, i) =>
      lettered(line, [x, at[1] + size * 1.02 + i * size * LINE_TALL], {
        ...style,
        ink: style.ink ?? 'ink',
        anchor,
        width: Number.POSITIVE_INFINITY,
      }),
    ),
  ];
}
