import type { InkName } from '../../style/inks.ts';
import type { Point, TextMark } from '../display-list.ts';
import { type Look, textWidth } from './letter-widths.ts';

/** From one line of words to the next, as a share of their size. */
const LINE = 1.18;

/** A room cut to its words may be narrower than they by what adding up rounds off. */
const ROUNDING_PX = 0.01;

/** Height of some lines, px. */
export const linesHeight = (lines: number, size: number): number => lines * size * LINE;

/** Words broken into lines no wider than a width, px. A word that is wider stays whole; held spaces do not break. */
export function linesOf(text: string, size: number, width: number, look: Look = {}): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size, look) <= width + ROUNDING_PX)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

export interface Lettering extends Look {
  readonly size: number;
  readonly ink?: InkName;
  readonly anchor?: TextMark['anchor'];
}

/** Lines of words, one under another. @param at the first baseline, at the anchor's side */
export const lettered = (
  lines: readonly string[],
  at: Point,
  { size, ink = 'ink', anchor = 'start', bold, italic, display }: Lettering,
): TextMark[] =>
  lines.map((text, i) => ({
    kind: 'text',
    text,
    x: at[0],
    y: at[1] + linesHeight(i, size),
    size,
    ink,
    anchor,
    ...(bold ? { bold } : {}),
    ...(italic ? { italic } : {}),
    ...(display ? { display } : {}),
  }));
