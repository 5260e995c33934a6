import type { InkName } from '../../../style/inks.ts';
import type { TextMark } from '../../display-list.ts';

/** Width of a letter against its size: a little more than the faces need, so that what is planned always fits. */
const LETTER = 0.55;
/** From one line of words to the next, against their size. */
export const LINE = 1.24;

/** Room that words take, px. */
export const wordsWidth = (text: string, size: number): number => text.length * size * LETTER;

/** Breaks words into lines no wider than a room; a word longer than the room has a line of its own. */
export function linesFor(text: string, widthPx: number, size: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && wordsWidth(`${last} ${word}`, size) <= widthPx)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

type Look = Pick<TextMark, 'anchor' | 'italic' | 'bold' | 'display'>;

/** Lines of words, the first at a baseline. */
export const writtenLines = (
  lines: readonly string[],
  x: number,
  y: number,
  size: number,
  ink: InkName,
  look: Partial<Look> = {},
): TextMark[] =>
  lines.map((text, i) => ({ kind: 'text', text, x, y: y + i * size * LINE, size, ink, anchor: 'start', ...look }));
