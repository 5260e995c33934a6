import type { InkName } from '../../style/inks.ts';
import { rectangle } from '../cloth/point.ts';
import type { Point } from '../display-list.ts';

/** One piece of a block, in the unit square. */
export interface BlockPiece {
  readonly points: readonly Point[];
  readonly ink: InkName;
  /** Appliqued pieces lie on top of others and cast a shadow even when sewn; pieced ones lie beside them. */
  readonly laidOn?: boolean;
}

export const pieced = (ink: InkName, ...points: Point[]): BlockPiece => ({ points, ink });
export const laidOn = (ink: InkName, points: readonly Point[]): BlockPiece => ({ points, ink, laidOn: true });
export const strip = (ink: InkName, x: number, y: number, width: number, height: number): BlockPiece => ({
  points: rectangle(x, y, width, height),
  ink,
});
