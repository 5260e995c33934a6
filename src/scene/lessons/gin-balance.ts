import type { InkName } from '../../style/inks.ts';
import { textWidth } from '../cloth/letter-widths.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { letter, slotAt } from '../cloth/slot-words.ts';
import { type DisplayList, group, type Mark } from '../display-list.ts';

/** A strip of cloth as long as a stream is heavy. */
type Strip = readonly { readonly part: 'lint' | 'seed' | 'trash' | 'water'; readonly kg: number }[];

interface BalanceRow {
  readonly key: string;
  readonly name: string;
  /** What goes on, and what is cut off here; both with their amounts in words. */
  readonly left: Strip;
  readonly leftText: string;
  readonly taken: Strip;
  readonly takenText: string;
}

export interface GinBalanceScene {
  readonly width: number;
  readonly rows: readonly BalanceRow[];
  /** Names of the parts, written on the first strip. */
  readonly parts: Readonly<Record<Strip[number]['part'], string>>;
  /** Mass of the longest strip, kg. */
  readonly mostKg: number;
}

const rowTall = 98;
const stripTall = 34;
const textPx = 15;
const gap = 12;
export const ginBalanceHeight = (rows: number): number => rows * rowTall + 6;

const inks: Readonly<Record<Strip[number]['part'], InkName>> = {
  lint: 'lint',
  seed: 'walnut',
  trash: 'leafGreen',
  water: 'faded',
};
const wordInks: Readonly<Record<Strip[number]['part'], InkName>> = {
  lint: 'ink',
  seed: 'lint',
  trash: 'ink',
  water: 'ink',
};

/** The strip of a bale's seed cotton, cut shorter at each machine; what is cut off lies beside it. */
export function ginBalanceMarks({ width, rows, parts, mostKg }: GinBalanceScene): DisplayList {
  const scale = (width - gap - 8) / mostKg;
  return rows.map((row, i) => {
    const y = i * rowTall + 26;
    const left = stripMarks(`gin/${row.key}/left`, row.left, 2, y, scale, i === 0 ? parts : null);
    const from = 2 + kgOf(row.left) * scale + gap;
    const taken = stripMarks(`gin/${row.key}/taken`, row.taken, from, y + 5, scale, null);
    return group(row.key, [
      ...letter(row.name, slotAt(2, y - 24, width - 4, 20), { size: textPx, bold: true }),
      ...left,
      ...taken,
      ...letter(row.leftText, slotAt(2, y + stripTall + 6, width * 0.48, 20), { size: textPx }),
      ...letter(row.takenText, slotAt(width * 0.5, y + stripTall + 6, width * 0.5 - 4, 20, 'end'), { size: textPx }),
    ]);
  });
}

const kgOf = (strip: Strip): number => strip.reduce((sum, { kg }) => sum + kg, 0);

const hasRoom = (text: string, wide: number): boolean => textWidth(text, textPx, { bold: true }) < wide - 6;

/** Names of parts too narrow to hold them, under the strip: to the left of the one before the last, to the right of the last. */
function namesBelow(strip: Strip, names: GinBalanceScene['parts'], x: number, y: number, scale: number): Mark[] {
  let at = x;
  return strip.flatMap(({ part, kg }, i): Mark[] => {
    const from = at;
    at += kg * scale;
    if (hasRoom(names[part], kg * scale)) return [];
    const last = i === strip.length - 1;
    const wide = textWidth(names[part], textPx, { bold: true }) + 4;
    const middle = (from + at) / 2;
    return [
      { kind: 'stitches', stitches: [[middle, y, middle, y + 8]], ink: 'ink', width: 1.3, flat: true },
      ...letter(names[part], slotAt(last ? from + 2 : at - wide, y + 8, wide, 20, last ? 'start' : 'end'), {
        size: textPx,
        bold: true,
      }),
    ];
  });
}

function stripMarks(
  name: string,
  strip: Strip,
  x: number,
  y: number,
  scale: number,
  names: GinBalanceScene['parts'] | null,
): Mark[] {
  const total = kgOf(strip) * scale;
  if (total < 0.5) return [];
  let at = x;
  const pieces = strip.flatMap(({ part, kg }): Mark[] => {
    const wide = kg * scale;
    const here = at;
    at += wide;
    if (wide < 0.4) return [];
    const fits = names !== null && hasRoom(names[part], wide);
    return [
      patch(`${name}/${part}`, rectangle(here, y, wide, stripTall), inks[part], {
        shadow: 0,
        seam: wide > 40 && !fits ? 6 : 0,
        grain: wide > 12 ? 0 : null,
        scissors: 'asDrawn',
      }),
      ...(fits
        ? letter(
            names[part],
            { ...slotAt(here, y, wide, stripTall, 'middle'), stands: 'middle' },
            {
              size: textPx,
              bold: true,
              ink: wordInks[part],
            },
          )
        : []),
    ];
  });
  return [
    ...(names ? namesBelow(strip, names, x, y + stripTall, scale) : []),
    patch(`${name}/edge`, rectangle(x - 1.5, y - 1.5, total + 3, stripTall + 3), 'ink', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    ...pieces,
  ];
}
