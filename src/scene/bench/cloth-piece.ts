import type { Structure } from '../../model/cloth/catalogue-facts.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import type { InkName } from '../../style/inks.ts';
import { flatThreads } from '../cloth/flat-threads.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { group, type Mark, type Stitch } from '../display-list.ts';
import { jerseyLoops } from '../stations/weaving/jersey.ts';
import { warpOver } from '../stations/weaving/swatch.ts';
import { type BenchPicture, benchRuler, rulerTall, type Scale } from './true-scale.ts';

/** A cloth to be drawn: threads per inch along and across (or courses and wales), and how thick its yarns are. */
export interface DrawnCloth {
  readonly structure: Structure;
  readonly endsPerInch: number;
  readonly picksPerInch: number;
  readonly warpMm: number;
  readonly weftMm: number;
  readonly inks: readonly [warp: InkName, weft: InkName];
}

const powers = [2, 3, 4, 5, 6, 8, 10, 15, 20];
/** A thread is drawn at least so far from the next, px. */
const leastPitch = 9;
/** A loop has more to show than a thread. */
const leastLoop = 22;

/** How many times life size a cloth is drawn so that its threads can be told apart. */
export function clothTimes({ structure, endsPerInch, picksPerInch }: DrawnCloth, pxPerMm: number): number {
  const spacing = (MM_PER_INCH / Math.max(endsPerInch, picksPerInch)) * pxPerMm;
  const least = structure === 'jersey' || structure === 'interlock' ? leastLoop : leastPitch;
  return powers.find((times) => spacing * times >= least) ?? powers.at(-1)!;
}

interface Window {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Threads over and under one another, ends upright, filling a window. */
function threads(cloth: DrawnCloth, { x, y, width, height }: Window, px: number): Mark[] {
  const endPitch = (MM_PER_INCH / cloth.endsPerInch) * px;
  const pickPitch = (MM_PER_INCH / cloth.picksPerInch) * px;
  const ends = Math.max(1, Math.floor(width / endPitch));
  const picks = Math.max(1, Math.floor(height / pickPitch));
  if (cloth.structure === 'jersey' || cloth.structure === 'interlock')
    return [
      group(
        'loops',
        jerseyLoops(
          {
            x,
            y,
            pitchX: pickPitch,
            pitchY: endPitch,
            across: Math.floor(height / endPitch),
            along: Math.floor(width / pickPitch),
          },
          cloth.warpMm * px,
          cloth.inks[0],
        ),
      ),
    ];
  const weave = cloth.structure;
  // Pressed threads are no wider than the room they have.
  const endWide = Math.min(cloth.warpMm * px, endPitch * 1.02);
  const pickWide = Math.min(cloth.weftMm * px, pickPitch * 1.02);
  const right = x + ends * endPitch;
  const foot = y + picks * pickPitch;
  const endX = (i: number) => x + (i + 0.5) * endPitch;
  const pickY = (j: number) => y + (j + 0.5) * pickPitch;
  const under: Stitch[] = Array.from({ length: picks }, (_, j) => [x, pickY(j), right, pickY(j)]);
  const upright: Stitch[] = Array.from({ length: ends }, (_, i) => [endX(i), y, endX(i), foot]);
  const over: Stitch[] = [];
  for (let j = 0; j < picks; j++)
    for (let i = 0; i < ends; i++) {
      if (warpOver(weave, i, j)) continue;
      const half = Math.min(endPitch * 0.5, endWide * 0.5 + endPitch * 0.1);
      over.push([endX(i) - half, pickY(j), endX(i) + half, pickY(j)]);
    }
  const edge = Math.max(0.8, Math.min(endWide, pickWide) * 0.2);
  return [
    flatThreads(under, 'ink', pickWide),
    flatThreads(under, cloth.inks[1], Math.max(0.4, pickWide - edge)),
    group(
      'ends',
      [flatThreads(upright, 'ink', endWide), flatThreads(upright, cloth.inks[0], Math.max(0.4, endWide - edge))],
      ends,
    ),
    flatThreads(over, 'ink', pickWide),
    flatThreads(over, cloth.inks[1], Math.max(0.4, pickWide - edge)),
  ];
}

/** A cloth magnified so that its threads can be counted, a ruler under it, and a square of it at true size. */
export function clothPiecePicture(cloth: DrawnCloth, width: number, scale: Scale): BenchPicture {
  const height = 196;
  const times = clothTimes(cloth, scale.pxPerMm);
  const small = Math.min(12 * scale.pxPerMm, width * 0.28);
  const large = { x: 14, y: 14, width: width - small - 52, height: height - 28 };
  const life = { x: width - small - 18, y: 14, width: small, height: Math.min(small, height - 28) };
  return {
    width,
    height: height + rulerTall + 6,
    marks: [
      patch('bench/cloth/pad', rectangle(1, 1, width - 4, height), 'calico', { shadow: 2.6, seam: 5, grain: null }),
      group('magnified', threads(cloth, large, scale.pxPerMm * times)),
      group('trueSize', threads(cloth, life, scale.pxPerMm)),
      ...benchRuler('bench/cloth/ruler', [14, height + 4], width - small - 52, scale, times),
      ...benchRuler('bench/cloth/life', [width - small - 18, height + 4], small, scale),
    ],
  };
}
