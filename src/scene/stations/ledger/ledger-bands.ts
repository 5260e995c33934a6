import { bandMarks, plainBand } from '../../cloth/band.ts';
import { offsetPath } from '../../cloth/offset-path.ts';
import type { Shown } from '../../cloth/part-cloth.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import { type Masses, massOf, shownKg, stripsOf } from '../flow/flow-input.ts';

/** One account of a ledger: what it holds, and what is written at the end of its band. */
export interface LedgerBand {
  readonly account: string;
  readonly masses: Masses;
  readonly label: string;
}

export interface LedgerBandsInput {
  readonly name: string;
  readonly in: readonly LedgerBand[];
  readonly out: readonly LedgerBand[];
  /** The part that is followed; all parts when null. */
  readonly followed: Shown | null;
  /** Width of the drawing, px. */
  readonly width: number;
  /** Size of the words, px. */
  readonly wordPx: number;
  /** The mass that the bands at their widest stand for, kg: sets two ledgers on one scale. All that came in where it is left out. */
  readonly fullKg?: number;
}

/** Where a strip of a part lies, so that a finger on it can be answered. */
export interface PartSpot extends Box {
  readonly part: Shown;
}

export interface LedgerBandsPicture {
  readonly height: number;
  readonly marks: DisplayList;
  readonly spots: readonly PartSpot[];
}

/** Width of all that came in, px; everything else is on its scale. */
const TRUNK_PX = 92;
/** A band too thin to lie apart from its neighbour's corner still turns this far from it, px. */
const LEAST_TURN_PX = 5;

/**
 * A ledger as cloth: what came in from the left, joined, and folded away to where it went. Every band is as wide as its mass.
 * Bands turn in an order that never crosses: those that sink furthest leave first and join last.
 */
export function ledgerBands(input: LedgerBandsInput): LedgerBandsPicture {
  const { width, wordPx } = input;
  const total = Math.max(sumOf(input.in), sumOf(input.out));
  if (!(total > 0)) return { height: 0, marks: [], spots: [] };
  const pxPerKg = TRUNK_PX / Math.max(total, input.fullKg ?? 0);
  const rowPx = TRUNK_PX / 8;
  const apart = wordPx * 1.55;
  const top = wordPx * 1.35;
  const sides = { in: layOut(input.in, pxPerKg, top, apart), out: layOut(input.out, pxPerKg, top, apart) };
  const height = Math.max(...[...sides.in, ...sides.out].map(({ free, px }) => free + px)) + 8;
  const spread = Math.min(width * 0.3, TRUNK_PX + 40);
  const marks: Mark[] = [];
  const words: Mark[] = [];
  const spots: PartSpot[] = [];
  for (const side of ['in', 'out'] as const) {
    const bands = sides[side];
    bands.forEach(({ band, joined, free, px }, i) => {
      const turn = turnOf(bands, i, width / 2, side === 'in' ? -spread : spread);
      const [near, far] = [joined + px / 2, free + px / 2];
      // Each band meets its other half under the seam in the middle.
      const inner: Point[] =
        near === far
          ? [[width / 2, near]]
          : [
              [width / 2, near],
              [turn, near],
              [turn, far],
            ];
      const path: Point[] = [...inner, [side === 'in' ? 0 : width - 5, far]];
      const run = side === 'in' ? [...path].reverse() : path;
      const name = `${input.name}/${side}/${band.account}`;
      marks.push(group(`band/${side}/${band.account}`, bandOf(name, run, band.masses, pxPerKg, rowPx, input.followed)));
      words.push(...labelMarks(name, band.label, side, width, free, wordPx));
      const end = side === 'in' ? { x: 0, width: turn } : { x: turn, width: width - turn };
      let y = free;
      for (const strip of stripsOf(band.masses, pxPerKg)) {
        if (strip.width > 0) spots.push({ part: strip.part, x: end.x, width: end.width, y, height: strip.width });
        y += strip.width;
      }
    });
  }
  // Words last: on a narrow screen they lie over bands that fold away below them.
  return { height, marks: [...marks, ...words], spots };
}

/** What is written at a band's end, on a slip of muslin, so that it reads over any cloth. */
function labelMarks(name: string, text: string, side: 'in' | 'out', width: number, y: number, wordPx: number): Mark[] {
  const wide = Math.min(width - 4, text.length * wordPx * 0.53 + 8);
  const x = side === 'in' ? 0 : width - 5 - wide;
  return [
    patch(`${name}/slip`, rectangle(x, y - wordPx * 1.28, wide, wordPx * 1.26), 'muslin', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    {
      kind: 'text',
      text,
      x: side === 'in' ? x + 4 : x + wide - 4,
      y: y - wordPx * 0.32,
      size: wordPx,
      ink: 'ink',
      anchor: side === 'in' ? 'start' : 'end',
      bold: true,
    },
  ];
}

const sumOf = (bands: readonly LedgerBand[]): number => bands.reduce((sum, { masses }) => sum + massOf(masses), 0);

interface LaidBand {
  readonly band: LedgerBand;
  /** Upper edge where all lie together, and where it lies alone, px. */
  readonly joined: number;
  readonly free: number;
  readonly px: number;
}

function layOut(bands: readonly LedgerBand[], pxPerKg: number, top: number, apart: number): LaidBand[] {
  let joined = top;
  let free = top;
  return bands.map((band) => {
    const px = massOf(band.masses) * pxPerKg;
    const laid = { band, joined, free, px };
    joined += px;
    free += px + apart;
    return laid;
  });
}

/** Where a band turns: the lowest nearest the middle, each further one by the widths between. */
function turnOf(bands: readonly LaidBand[], i: number, middle: number, spread: number): number {
  const lower = bands.slice(i + 1).reduce((sum, { px }) => sum + Math.max(px, LEAST_TURN_PX), 0);
  const all = bands.reduce((sum, { px }) => sum + Math.max(px, LEAST_TURN_PX), 0) || 1;
  const share = (lower + Math.max(bands[i]!.px, LEAST_TURN_PX) / 2) / all;
  return middle + spread * (0.12 + 0.88 * share);
}

function bandOf(
  name: string,
  path: readonly Point[],
  masses: Masses,
  pxPerKg: number,
  rowPx: number,
  followed: Shown | null,
): Mark[] {
  const strips = stripsOf(masses, pxPerKg);
  if (followed === null) return bandMarks(name, path, strips, { rowPx });
  const width = massOf(masses) * pxPerKg;
  let edge = -width / 2;
  for (const strip of strips) {
    if (strip.part === followed) break;
    edge += strip.width;
  }
  const followedPx = shownKg(masses, followed) * pxPerKg;
  return [
    ...plainBand(name, path, width, 'calico'),
    ...bandMarks(`${name}/followed`, offsetPath(path, edge + followedPx / 2), [{ part: followed, width: followedPx }], {
      rowPx,
    }),
  ];
}

/** The part under a point of the drawing; null beside the bands. */
export function partAtPoint(spots: readonly PartSpot[], x: number, y: number, reachPx: number): Shown | null {
  let best: { part: Shown; away: number } | null = null;
  for (const spot of spots) {
    if (x < spot.x || x > spot.x + spot.width) continue;
    const away = Math.max(spot.y - y, y - spot.y - spot.height, 0);
    if (away <= reachPx && (!best || away < best.away)) best = { part: spot.part, away };
  }
  return best?.part ?? null;
}
