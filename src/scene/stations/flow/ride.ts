import { chanceOf, spread } from '../../cloth/chance.ts';
import { offsetPath } from '../../cloth/offset-path.ts';
import type { Shown } from '../../cloth/part-cloth.ts';
import { type LintForm, PIECE_CUTS } from '../../cloth/piece.ts';
import { pathLength } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import type { MovingPiece } from '../../scene-frame.ts';
import { type FlowLegend, type Masses, shownKg, shownParts } from './flow-input.ts';
import { pieceCount, pieceKg } from './piece-mass.ts';

/** A stretch of band that pieces ride on: its middle line, and which lengths of it can be seen. */
export interface Track {
  readonly name: string;
  /** Side of the ledger and account: 'in/lot', 'out/seedHouse'. */
  readonly band: string;
  readonly path: readonly Point[];
  readonly visible: readonly (readonly [from: number, to: number])[];
  readonly pxPerKg: number;
}

const LARGEST_PX = 15;
const SMALLEST_PX = 5.5;
const BIT_PX = 6.5;

/** A run of strips that share lanes: one wide strip, or neighbours too thin for lanes of their own. */
interface Bed {
  readonly parts: readonly Shown[];
  readonly middle: number;
  readonly width: number;
}

/** Every piece of one entry, riding on the strip of its part. */
export function ridingPieces(track: Track, masses: Masses, legend: FlowLegend, form: LintForm = 'tuft'): MovingPiece[] {
  const seen = track.visible.reduce((sum, [from, to]) => sum + Math.max(0, to - from), 0);
  if (seen <= 0) return [];
  return bedsOf(masses, track.pxPerKg, legend).flatMap((bed) => {
    const pieces = interleaved(bed.parts.map((part) => ({ part, count: pieceCount(masses, part, legend) })));
    if (pieces.length === 0) return [];
    const small = bed.parts.every((part) => part !== 'lint' && part !== 'seed');
    const fair = Math.sqrt((Math.max(bed.width, 12) * seen) / pieces.length) * 0.42;
    const size = Math.min(
      small ? 8.5 : LARGEST_PX,
      Math.max(small ? BIT_PX : SMALLEST_PX, Math.min(fair, Math.max(bed.width * 0.46, BIT_PX))),
    );
    const lanes = Math.max(1, Math.floor(bed.width / (size * 2.05)));
    const perLane = Math.ceil(pieces.length / lanes);
    return pieces.map((part, i): MovingPiece => {
      const name = `${track.name}/${bed.parts[0]}/${i}`;
      const chance = chanceOf(name);
      const lane = i % lanes;
      const step = Math.floor(i / lanes);
      const pitch = seen / perLane;
      const share = (step + 0.5 + (lanes > 1 ? (lane % 2 ? 0.25 : -0.25) : 0) + spread(chance, 0.1)) / perLane;
      const held = Math.min(1 - Math.min(0.5, size / seen), Math.max(Math.min(0.5, size / seen), share));
      const laneWidth = bed.width / lanes;
      const wander = Math.max(0, Math.min(laneWidth / 2 - size, pitch * 0.2));
      const across = bed.middle - bed.width / 2 + laneWidth * (lane + 0.5) + spread(chance, wander);
      const path = offsetPath(track.path, across);
      // The middle line and the lane differ in length where the band folds: rest places are held in proportion.
      const stretch = pathLength(path) / pathLength(track.path);
      return {
        name,
        band: track.band,
        part,
        form,
        standsForKg: pieceKg(part, legend),
        path,
        restPx: visibleAt(track.visible, held * seen) * stretch,
        size: part === 'lint' ? size : Math.min(size, part === 'seed' ? 10.5 : 9),
        cut: Math.floor(chance() * PIECE_CUTS),
      };
    });
  });
}

/** Finds where lanes lie: strips from one side of the band to the other, px from its middle. */
function bedsOf(masses: Masses, pxPerKg: number, legend: FlowLegend): Bed[] {
  let total = 0;
  for (const part of shownParts) total += shownKg(masses, part) * pxPerKg;
  let edge = -total / 2;
  const beds: { parts: Shown[]; from: number; to: number }[] = [];
  let thin: { parts: Shown[]; from: number; to: number } | null = null;
  for (const part of shownParts) {
    const width = shownKg(masses, part) * pxPerKg;
    const from = edge;
    edge += width;
    if (pieceCount(masses, part, legend) === 0) continue;
    if (width >= BIT_PX * 2.6) {
      thin = null;
      beds.push({ parts: [part], from, to: edge });
    } else if (thin) {
      thin.parts.push(part);
      thin.to = edge;
    } else {
      thin = { parts: [part], from, to: edge };
      beds.push(thin);
    }
  }
  return beds.map(({ parts, from, to }) => ({ parts, middle: (from + to) / 2, width: to - from }));
}

/** Deals pieces of several parts into one row, each part evenly spread. */
function interleaved(kinds: readonly { part: Shown; count: number }[]): Shown[] {
  return kinds
    .flatMap(({ part, count }) => Array.from({ length: count }, (_, i) => ({ part, place: (i + 0.5) / count })))
    .sort((a, b) => a.place - b.place)
    .map(({ part }) => part);
}

/** A length along what can be seen, as a length along the whole path. */
function visibleAt(visible: Track['visible'], length: number): number {
  let left = length;
  for (const [from, to] of visible) {
    const span = Math.max(0, to - from);
    if (left <= span) return from + left;
    left -= span;
  }
  return visible.at(-1)?.[1] ?? 0;
}
