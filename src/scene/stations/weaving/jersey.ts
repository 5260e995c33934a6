import type { InkName } from '../../../style/inks.ts';
import { flatThreads } from '../../cloth/flat-threads.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';

export interface LoopGrid {
  readonly x: number;
  readonly y: number;
  /** From course to course, and from wale to wale, px. */
  readonly pitchX: number;
  readonly pitchY: number;
  /** Wales, and courses. */
  readonly across: number;
  readonly along: number;
}

const pathOf = (points: readonly Point[]): Stitch[] => points.slice(1).map((to, i) => [...points[i]!, ...to] as const);

/**
 * Plain jersey from its face, courses running down the picture and wales to the right: the two legs of every loop lie over the
 * head of the loop before, its head and the feet between loops lie under.
 */
export function jerseyLoops(grid: LoopGrid, thick: number, ink: InkName): Mark[] {
  const under: Stitch[] = [];
  const legs: Stitch[] = [];
  const { pitchX, pitchY } = grid;
  for (let course = 0; course < grid.along; course++) {
    const base = grid.x + course * pitchX;
    const head = base + pitchX * 1.28;
    for (let wale = 0; wale < grid.across; wale++) {
      const middle = grid.y + (wale + 0.5) * pitchY;
      const [narrow, broad] = [pitchY * 0.13, pitchY * 0.33];
      const at = (x: number, across: number): Point => [x, middle + across];
      under.push(
        ...pathOf([
          at(head, -broad),
          at(head + pitchX * 0.2, -broad * 0.55),
          at(head + pitchX * 0.26, 0),
          at(head + pitchX * 0.2, broad * 0.55),
          at(head, broad),
        ]),
      );
      if (wale + 1 < grid.across)
        under.push(
          ...pathOf([
            at(base, narrow),
            at(base - pitchX * 0.18, pitchY * 0.3),
            at(base - pitchX * 0.18, pitchY * 0.7),
            at(base, pitchY - narrow),
          ]),
        );
      for (const side of [-1, 1])
        legs.push(
          ...pathOf([
            at(base, side * narrow),
            at(base + pitchX * 0.42, side * (narrow + (broad - narrow) * 0.25)),
            at(base + pitchX * 0.9, side * (narrow + (broad - narrow) * 0.86)),
            at(head, side * broad),
          ]),
        );
    }
  }
  const edge = Math.max(1, thick * 0.24);
  return [
    flatThreads(under, 'mid', thick),
    flatThreads(under, ink === 'lint' ? 'fadedThin' : 'walnutPale', thick - edge * 0.6),
    flatThreads(legs, 'ink', thick + edge),
    flatThreads(legs, ink, thick),
  ];
}
