import { textWidth } from '../../cloth/letter-widths.ts';
import { lettered, linesHeight, linesOf } from '../../cloth/lettering.ts';
import { partStitches } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark } from '../../display-list.ts';

/** Seeds of the whole field as one band, and what became of them: each length is a count. */
export interface SeedCounts {
  readonly sown: number;
  readonly all: number;
  /** Known when the seedlings are up; null before. */
  readonly up: number | null;
  readonly labels: {
    readonly sown: string;
    readonly up: string;
    readonly notUp: string;
    readonly count: (value: number) => string;
  };
}

/** Height of the cloth, of the text size. */
const DEPTH = 1.6;
/** Height of the band with its words, which may take two lines, px. */
export const countBandHeight = (textPx: number): number => textPx * DEPTH + linesHeight(2, textPx);

type WordInk = 'ink' | 'lint';
interface Stretch {
  readonly name: 'sown' | 'up' | 'notUp';
  readonly count: number;
  readonly label: string;
  readonly x: number;
  readonly width: number;
  readonly ink: 'walnut' | 'bollGreen' | 'madder';
  readonly anchor: 'start' | 'end';
}

/** The band: walnut while the seed lies, then green for what is up and madder for what stays. */
export function countBandMarks(counts: SeedCounts, box: Box, textPx: number, ink: WordInk): Mark[] {
  const { sown, all, up, labels } = counts;
  const depth = textPx * DEPTH;
  const length = (count: number) => (box.width * count) / Math.max(1, all);
  const row = { ...box, height: depth };
  if (up === null || sown < all) {
    const stretch: Stretch = {
      name: 'sown',
      count: sown,
      label: labels.sown,
      x: box.x,
      width: length(sown),
      ink: 'walnut',
      anchor: 'start',
    };
    return [ghostMark(row, ink), ...stretchMarks([stretch], labels.count, row, textPx, ink)];
  }
  const gap = 2;
  const split = box.x + length(up);
  return stretchMarks(
    [
      { name: 'up', count: up, label: labels.up, x: box.x, width: length(up), ink: 'bollGreen', anchor: 'start' },
      {
        name: 'notUp',
        count: all - up,
        label: labels.notUp,
        x: split + gap,
        width: Math.max(0, length(all - up) - gap),
        ink: 'madder',
        anchor: 'end',
      },
    ],
    labels.count,
    row,
    textPx,
    ink,
  );
}

/** All the seed there is, as an outline to be filled. */
const ghostMark = ({ x, y, width, height }: Box, ink: WordInk): Mark => ({
  kind: 'stitches',
  stitches: runningStitches(rectangle(x, y, width, height), 'counts/ghost', { on: 6, off: 6 }),
  ink: ink === 'lint' ? 'faded' : 'chalk',
  width: 1.4,
  flat: true,
});

/** Each stretch with its number on it where it fits, else before its name below; names that would meet take two lines. */
function stretchMarks(
  stretches: readonly Stretch[],
  count: (value: number) => string,
  row: Box,
  textPx: number,
  ink: WordInk,
): Mark[] {
  const written = stretches.map((stretch) => {
    const number = count(stretch.count);
    const onCloth = textWidth(number, textPx, { bold: true }) + textPx < stretch.width;
    return { ...stretch, number, onCloth, below: onCloth ? stretch.label : `${number} ${stretch.label}` };
  });
  const needed = written.reduce((sum, { below }) => sum + textWidth(below, textPx, { bold: true }) + textPx, 0);
  const stacked = written.length > 1 && needed > row.width;
  let line = 0;
  return written.flatMap(({ name, count: held, x, width, ink: cloth, anchor, number, onCloth, below }) => {
    const end = stacked ? 'start' : anchor;
    const wordsX = end === 'start' ? row.x : row.x + row.width;
    const names = linesOf(below, textPx, row.width, { italic: true });
    const namesY = row.y + row.height + textPx * 1.05 + linesHeight(line, textPx);
    if (stacked) line += names.length;
    return [
      group(`counts/${name}`, clothMarks(name, x, width, cloth, row), Math.round(held)),
      ...(onCloth
        ? lettered(
            [number],
            [
              anchor === 'start' ? x + textPx * 0.5 : x + width - textPx * 0.5,
              row.y + row.height * 0.5 + textPx * 0.34,
            ],
            { size: textPx, ink: 'lint', anchor, bold: true },
          )
        : []),
      ...lettered(names, [wordsX, namesY], { size: textPx, ink: ink, anchor: end, italic: true }),
    ];
  });
}

/** A strip of cloth; seed that lies is sewn with the stitch of seed. */
function clothMarks(name: Stretch['name'], x: number, width: number, ink: Stretch['ink'], row: Box): Mark[] {
  if (width < 3) return [];
  const strip = patch(`counts/${name}`, rectangle(x, row.y, width, row.height), ink, {
    shadow: 2.6,
    seam: 0,
    grain: null,
    scissors: { miss: 0.6, snip: 120, bow: 0.001 },
  });
  if (name !== 'sown' || width < 40) return [strip];
  const y = row.y + row.height * 0.86;
  const stitches = partStitches(
    'seed',
    [
      [x + 6, y],
      [x + width - 6, y],
    ],
    'counts/row',
    0.6,
  );
  return [strip, { kind: 'stitches', stitches, ink: 'thread', width: 1.2 }];
}
