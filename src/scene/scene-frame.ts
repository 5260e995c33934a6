import type { Shown } from './cloth/part-cloth.ts';
import { cutPiece, type LintForm } from './cloth/piece.ts';
import { pathLength, spotAt } from './cloth/point.ts';
import { type DisplayList, group, type Mark, type Point } from './display-list.ts';

/** One counted piece on its way along a band. */
export interface MovingPiece {
  readonly name: string;
  /** Side of the ledger and account it is counted in: 'in/lot', 'out/seedHouse'. */
  readonly band: string;
  readonly part: Shown;
  /** What its lint has become. */
  readonly form: LintForm;
  /** Which of its part's cuts it is. */
  readonly cut: number;
  /** The mass it stands for, kg. */
  readonly standsForKg: number;
  readonly path: readonly Point[];
  /** Where on its path it lies when nothing moves, px from the start. */
  readonly restPx: number;
  /** From the middle to the edge, px. */
  readonly size: number;
}

/** How a part of a machine moves while the scene plays. */
export type PartMotion =
  | { readonly kind: 'turn'; readonly turnsPerSecond: number }
  /** To and fro: out by a vector and back, smoothly. */
  | { readonly kind: 'stroke'; readonly by: Point; readonly strokesPerSecond: number };

/** A part of a machine that moves for as long as the scene plays: a saw, a roller, a shuttle. */
export interface MovingPart {
  /** Equal names have equal marks about their middle, so that a painter may draw each once. */
  readonly name: string;
  /** Drawn where it rests. */
  readonly marks: DisplayList;
  readonly middle: Point;
  /** Around the middle, px: holds every mark. */
  readonly radius: number;
  readonly motion: PartMotion;
  /** Whether the counted pieces pass above it or below it. */
  readonly passes: 'belowPieces' | 'abovePieces';
  /** The quantity that the motion shows, with its rate, in words: nothing moves without one. */
  readonly shows: string;
}

/** A picture with things that move in it: what lies below the pieces, the pieces, and what they pass under. */
export interface SceneFrame {
  readonly width: number;
  readonly height: number;
  readonly still: DisplayList;
  readonly parts: readonly MovingPart[];
  readonly moving: readonly MovingPiece[];
  readonly over: DisplayList;
  /** Seconds in which every piece goes the whole of its path once: so pieces pass at a rate proportional to their mass. */
  readonly lapSeconds: number;
}

/** Where a piece is after some seconds of motion. */
export function pieceAt(piece: MovingPiece, seconds: number, lapSeconds: number): Point {
  const length = pathLength(piece.path);
  if (length === 0) return piece.path[0] ?? [0, 0];
  const along = (((piece.restPx + (seconds / lapSeconds) * length) % length) + length) % length;
  return spotAt(piece.path, along).at;
}

/** Where a part is after some seconds of motion: how far round, radians, and how far from its rest, px. */
export function partAt({ motion }: MovingPart, seconds: number): { readonly turn: number; readonly shift: Point } {
  if (motion.kind === 'turn') return { turn: 2 * Math.PI * ((motion.turnsPerSecond * seconds) % 1), shift: [0, 0] };
  const out = (1 - Math.cos(2 * Math.PI * motion.strokesPerSecond * seconds)) / 2;
  return { turn: 0, shift: [motion.by[0] * out, motion.by[1] * out] };
}

/** The whole frame at rest as one display list: for print, first paint, reduced motion and no WebGL. */
export function frameAtRest(frame: SceneFrame): DisplayList {
  const pieces: Mark[] = frame.moving.flatMap((piece) => {
    const [x, y] = pieceAt(piece, 0, frame.lapSeconds);
    return [...cutPiece(piece.part, piece.cut, piece.form, x, y, piece.size)];
  });
  const partsThat = (passes: MovingPart['passes']) =>
    frame.parts.filter((part) => part.passes === passes).map(({ name, marks }) => group(`part/${name}`, marks));
  return [
    ...frame.still,
    ...partsThat('belowPieces'),
    group('pieces', pieces, frame.moving.length),
    ...partsThat('abovePieces'),
    ...frame.over,
  ];
}
