import type { Point } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
import { distance } from './point.ts';

export interface Scissors {
  /** Length of one snip, px. */
  readonly snip?: number;
  /** How far a snip or a corner misses its line, px. */
  readonly miss?: number;
  /** How far a whole side bows, as a share of its length. */
  readonly bow?: number;
}

/**
 * Cuts an outline by hand: corners a little off, every side a few straight snips along a shallow bow.
 * @param outline closed outline, px
 * @param name the piece's name: the same name cuts the same edge
 */
export function cutEdge(outline: readonly Point[], name: string, { snip = 44, miss = 1.4, bow = 0.01 }: Scissors = {}) {
  const chance = chanceOf(name);
  const corners = outline.map(([x, y]): Point => [x + spread(chance, miss), y + spread(chance, miss)]);
  const cut: Point[] = [];
  for (let i = 0; i < corners.length; i++) {
    const from = corners[i]!;
    const to = corners[(i + 1) % corners.length]!;
    const length = distance(from, to) || 1;
    const [acrossX, acrossY] = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
    const snips = Math.max(1, Math.round(length / snip));
    const bowPx = spread(chance, bow * length);
    cut.push(from);
    for (let step = 1; step < snips; step++) {
      const share = (step + spread(chance, 0.28)) / snips;
      const off = bowPx * 4 * share * (1 - share) + spread(chance, miss * 0.6);
      cut.push([
        from[0] + (to[0] - from[0]) * share + acrossX * off,
        from[1] + (to[1] - from[1]) * share + acrossY * off,
      ]);
    }
  }
  return cut;
}
