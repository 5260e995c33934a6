import type { CottonKind } from '../../cloth/flower.ts';
import type { Point } from '../../display-list.ts';

/** How a plant is drawn on a day. */
export interface PlantLook {
  readonly dayOfYear: number;
  readonly pxPerInch: number;
  readonly kind: CottonKind;
  /** Share of the leaves still on the plant, 0 to 1. */
  readonly leafShare: number;
  readonly foot: Point;
}

/** Sizes on the page, inches from the middle to the edge. Fruit is drawn a fifth over size, so that it can be counted. */
export const SIZES = {
  mainLeaf: 2.7,
  branchLeaf: 1.9,
  tipLeaf: 1,
  square: 1.05,
  flower: 2.1,
  greenBoll: 1.35,
  openBoll: 1.95,
  seedLeavesUntilNode: 9,
  /** Joints at the top that are still green. */
  greenNodes: 7,
} as const;
