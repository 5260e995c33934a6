import type { InkName } from '../../style/inks.ts';
import { letter, slotIn } from '../cloth/slot-words.ts';
import type { Mark, Stitch } from '../display-list.ts';

/** A rule of a stated length with its words after it, or under it where they are long; the scale of a stretch. */
export function scaleRule(
  text: string,
  length: number,
  at: { readonly x: number; readonly y: number; readonly width: number },
  { ink, size }: { readonly ink: InkName; readonly size: number },
): Mark[] {
  const { x, y, width } = at;
  const stitches: Stitch[] = [
    [x, y, x + length, y],
    [x, y - 6, x, y + 6],
    [x + length, y - 6, x + length, y + 6],
    [x + length / 2, y - 3, x + length / 2, y + 3],
  ];
  const beside = length < width * 0.34;
  const from = beside ? x + length + 12 : x;
  return [
    { kind: 'stitches', stitches, ink, width: 2, flat: true },
    ...letter(
      text,
      slotIn(
        { x: from, y: beside ? y - size * 0.7 : y + 8, width: width - (from - x), height: size * 2.5 },
        'start',
        'top',
      ),
      { size, ink, italic: true },
    ),
  ];
}

/** Height that the rule and its words take below its line, px. */
export const ruleHeight = (length: number, width: number, size: number): number =>
  length < width * 0.34 ? size * 2 : size * 2.6 + 8;
