import type { Shown } from './cloth/part-cloth.ts';
import { cutPiece, type LintForm } from './cloth/piece.ts';
import { pathLength, spotAt } from './cloth/point.ts';
import type { DisplayList, Mark, Point } from './display-list.ts';

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

/** A picture with things that move in it: what lies below the pieces, the pieces, and what they pass under. */
export interface SceneFrame {
  readonly width: number;
  readonly height: number;
  readonly still: DisplayList;
  readonly moving: readonly MovingPiece[];
  readonly over: DisplayList;
  /** Seconds in which every piece goes the whole of its path once: so pieces pass at a rate proportional to their mass. */
  readonly lapSeconds: number;
}

/** A picture in which nothing moves. */
export const stillFrame = (width: number, height: number, still: DisplayList): SceneFrame => ({
  width,
  height,
  still,
  moving: [],
  over: [],
  lapSeconds: 1,
});

/** Where a piece is after some seconds of motion. */
export function pieceAt(piece: MovingPiece, seconds: number, lapSeconds: number): Point {
  const length = pathLength(piece.path);
  if (length === 0) return piece.path[0] ?? [0, 0];
  const along = (((piece.restPx + (seconds / lapSeconds) * length) % length) + length) % length;
  return spotAt(piece.path, along).at;
}

/** The whole frame at rest as one display list: for print, first paint, reduced motion and no WebGL. */
export function frameAtRest(frame: SceneFrame): DisplayList {
  const pieces: Mark[] = frame.moving.flatMap((piece) => {
    const [x, y] = pieceAt(piece, 0, frame.lapSeconds);
    return [...cutPiece(piece.part, piece.cut, piece.form, x, y, piece.size)];
  });
  return [...frame.still, { kind: 'group', name: 'pieces', count: frame.moving.length, marks: pieces }, ...frame.over];
}
