import { MM_PER_INCH } from '../../model/units.ts';
import type { InkName } from '../../style/inks.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import type { Mark, Stitch } from '../display-list.ts';

/** What a picture of the bench needs to know of its reader: how many px a millimeter is, and in which unit rulers are marked. */
export interface Scale {
  readonly pxPerMm: number;
  readonly isMetric: boolean;
  /** The sign at the ruler's end. */
  readonly unit: string;
}

/** A picture and its size, px. */
export interface BenchPicture {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
}

/** CSS pixels to the millimeter, where nobody has laid a card on the screen. */
export const usualPxPerMm = 96 / MM_PER_INCH;

/** Height of a ruler, px. */
export const rulerTall = 30;

const ticksToALabel = 10;
const leastTickPx = 4;

/** Divisions of a ruler: a tick's length in mm, how many go to a number, and what a number counts in. */
interface Division {
  readonly tickMm: number;
  readonly every: number;
  readonly each: number;
  readonly unit: string;
}

/** The finest division whose ticks can be told apart: as on a tape at life size, in tenths where it is magnified. */
function divisionOf({ pxPerMm, isMetric, unit }: Scale, magnified: number): Division {
  const atLife: Division = isMetric
    ? { tickMm: 1, every: 10, each: 1, unit }
    : { tickMm: MM_PER_INCH / 8, every: 8, each: 1, unit };
  if (magnified === 1) return atLife;
  const tenths = [0.0001, 0.001, 0.01, 0.1].map((tick): Division => {
    const tickMm = isMetric ? tick : tick * MM_PER_INCH;
    return { tickMm, every: ticksToALabel, each: tick * ticksToALabel, unit: isMetric ? 'mm' : unit };
  });
  return tenths.find(({ tickMm }) => tickMm * pxPerMm * magnified >= leastTickPx) ?? atLife;
}

/**
 * A tailor's ruler along the foot of a picture.
 * @param magnified how many times life size the picture beside it is
 */
export function benchRuler(
  name: string,
  [x, y]: readonly [x: number, y: number],
  length: number,
  scale: Scale,
  magnified = 1,
): Mark[] {
  const { tickMm, every, each, unit } = divisionOf(scale, magnified);
  const tickPx = tickMm * scale.pxPerMm * magnified;
  const stitches: Stitch[] = [];
  const words: Mark[] = [];
  for (let i = 0; i * tickPx <= length; i++) {
    const isLong = i % every === 0;
    const isHalf = i % (every / 2) === 0;
    const at = x + i * tickPx;
    stitches.push([at, y + 2, at, y + (isLong ? 14 : isHalf ? 10 : 6)]);
    if (isLong && i > 0 && at < x + length - 34)
      words.push(word(String(Number(((i / every) * each).toPrecision(3))), at, y + 25, 'middle'));
  }
  return [
    patch(name, rectangle(x - 4, y, length + 8, rulerTall), 'weld', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    { kind: 'stitches', stitches, ink: 'ink', width: 1.2, flat: true },
    ...words,
    word(unit, x + length, y + 25, 'end'),
  ];
}

const word = (text: string, x: number, y: number, anchor: 'start' | 'middle' | 'end', ink: InkName = 'ink'): Mark => ({
  kind: 'text',
  text,
  x,
  y,
  size: 13,
  ink,
  anchor,
  bold: true,
});
