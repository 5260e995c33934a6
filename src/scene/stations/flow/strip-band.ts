import { bandMarks } from '../../cloth/band.ts';
import type { LintForm } from '../../cloth/piece.ts';
import { pathLength } from '../../cloth/point.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPiece } from '../../scene-frame.ts';
import { type FlowLegend, type Masses, massOf, stripsOf } from './flow-input.ts';
import { ridingPieces } from './ride.ts';

/** How masses are drawn in one scene: the scale of its bands, and what its pieces stand for. */
export interface FlowScale {
  readonly pxPerKg: number;
  readonly legend: FlowLegend;
}

export interface StripBand {
  /** Side of the ledger and account: 'in/lot', 'out/leftInField'. */
  readonly band: string;
  readonly masses: Masses;
  /** Middle line of the whole band. */
  readonly path: readonly Point[];
  /** What its lint has become. */
  readonly form?: LintForm;
  /** The lengths of the path that pieces can be seen on, px; left out, all of it. */
  readonly visible?: readonly (readonly [from: number, to: number])[];
  /** No pieces of its own: they are counted on another stretch of the same account. */
  readonly bare?: boolean;
}

export const bandPx = (masses: Masses, { pxPerKg }: FlowScale): number => massOf(masses) * pxPerKg;

/** A band as wide as its mass, and the counted pieces that ride it. */
export function stripBand(
  scene: string,
  { band, masses, path, form = 'tuft', visible, bare = false }: StripBand,
  scale: FlowScale,
): { readonly marks: Mark[]; readonly pieces: MovingPiece[] } {
  const name = `${scene}/${band}`;
  const rowPx = scale.legend.rowKg * scale.pxPerKg;
  const marks = [group(`band/${band}`, bandMarks(name, path, stripsOf(masses, scale.pxPerKg), { rowPx }))];
  if (bare) return { marks, pieces: [] };
  const track = { name, band, path, visible: visible ?? [[0, pathLength(path)]], pxPerKg: scale.pxPerKg } as const;
  return { marks, pieces: ridingPieces(track, masses, scale.legend, form) };
}
