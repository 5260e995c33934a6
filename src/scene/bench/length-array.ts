import { MM_PER_INCH } from '../../model/units.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { group, type Mark, type Stitch } from '../display-list.ts';
import type { BenchPicture, Scale } from './true-scale.ts';

const edge = { top: 14, foot: 12, left: 58, right: 16 };
/** Fibres closer than this run together. */
const pitchPx = 2.6;
const shortBelowMm = MM_PER_INCH / 2;
/** The pad is as high as the longest fibre of any cotton, so that two pads can be compared. */
const padMm = 57;

/** How many fibres a pad so wide lays out side by side. */
export const fibresLaid = (width: number): number =>
  Math.max(20, Math.floor((width - edge.left - edge.right) / pitchPx));

/**
 * Fibres side by side on a pad, longest at the left, each at its true length from the foot up. Those under half an inch are of
 * another ink, and end below the dashed line.
 * @param lengthsMm longest first
 */
export function lengthArrayPicture(lengthsMm: readonly number[], width: number, scale: Scale): BenchPicture {
  const foot = edge.top + padMm * scale.pxPerMm;
  const height = foot + edge.foot;
  const y = (mm: number) => foot - mm * scale.pxPerMm;
  const stitch = (mm: number, at: number): Stitch => {
    const x = edge.left + (at + 0.5) * pitchPx;
    // A lean of its own for each fibre, the same on every drawing.
    return [x, foot, x + (((at * 7919) % 13) / 13 - 0.5) * 1.4, y(mm)];
  };
  const laid = lengthsMm.map((mm, at) => ({ mm, line: stitch(mm, at) }));
  const right = width - edge.right;
  const dashes: Stitch[] = Array.from({ length: Math.floor((right - edge.left) / 10) }, (_, i) => [
    edge.left + i * 10,
    y(shortBelowMm),
    edge.left + i * 10 + 5,
    y(shortBelowMm),
  ]);
  return {
    width,
    height,
    marks: [
      patch('bench/array', rectangle(1, 1, width - 4, height - 4), 'indigo', { shadow: 2.6, seam: 5, grain: null }),
      ...upright(foot, scale),
      group(
        'fibres',
        [
          fibres(
            laid.filter(({ mm }) => mm >= shortBelowMm),
            'lint',
          ),
          fibres(
            laid.filter(({ mm }) => mm < shortBelowMm),
            'weldPale',
          ),
        ],
        lengthsMm.length,
      ),
      { kind: 'stitches', stitches: dashes, ink: 'weldPale', width: 1.2, flat: true },
    ],
  };
}

const fibres = (laid: readonly { readonly line: Stitch }[], ink: 'lint' | 'weldPale'): Mark => ({
  kind: 'stitches',
  stitches: laid.map(({ line }) => line),
  ink,
  width: 1.3,
  flat: true,
});

/** A chalk rule up the side: quarters of an inch, or half centimeters. */
function upright(foot: number, { pxPerMm, isMetric, unit }: Scale): Mark[] {
  const tickMm = isMetric ? 5 : MM_PER_INCH / 4;
  const every = isMetric ? 2 : 4;
  const count = Math.floor(padMm / tickMm);
  const x = edge.left - 6;
  const stitches: Stitch[] = [[x, foot, x, foot - count * tickMm * pxPerMm]];
  const words: Mark[] = [];
  for (let i = 0; i <= count; i++) {
    const at = foot - i * tickMm * pxPerMm;
    const isLong = i % every === 0;
    stitches.push([x, at, x - (isLong ? 10 : 5), at]);
    if (isLong && i > 0)
      words.push({
        kind: 'text',
        text: i === every ? `${i / every} ${unit}` : String(i / every),
        x: x - 13,
        y: at + 5,
        size: 13,
        ink: 'lint',
        anchor: 'end',
        bold: true,
      });
  }
  return [{ kind: 'stitches', stitches, ink: 'lint', width: 1.3, flat: true }, ...words];
}
