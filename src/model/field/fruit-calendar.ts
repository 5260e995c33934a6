/** Positions on a plant: first, second and third on fruiting branches, and vegetative branches. */
const positionNames = ['first', 'second', 'third', 'vegetative'] as const;
export const positionCount = positionNames.length;
/** Place of the vegetative branches among the positions; those before it are the positions of a fruiting branch. */
export const vegetativePosition = positionNames.indexOf('vegetative');

/**
 * The fruit of the mean plant, by day since planting (0 is the planting day). A cohort of branches is known by the day its
 * first-position square appeared; a cohort of bolls by the day it flowered. -1 stands for a day that never came.
 */
export interface FruitCalendar {
  /** Days from planting to the last one reached, inclusive. */
  dayCount: number;
  readonly nodes: Float64Array;
  /** Fruiting branches since the first square, cumulative. */
  readonly branches: Float64Array;
  /** New fruiting branches of each day. */
  readonly newBranches: Float64Array;
  /** By position and branch cohort: sites for each branch, the day of the square and of its flower. */
  readonly sites: readonly Float64Array[];
  readonly squareDay: readonly Int16Array[];
  readonly flowerDay: readonly Int16Array[];
  /** By position and day: new squares, flowers, and the share of that day's flowers kept. Numbers are per plant. */
  readonly squares: readonly Float64Array[];
  readonly flowers: readonly Float64Array[];
  readonly keptShare: readonly Float64Array[];
  /** By flowering day: the day its bolls opened, and their age then on the boll's clock, days. */
  readonly openDay: Int16Array;
  readonly openAge: Float64Array;
}

const perPosition = <T>(make: () => T): T[] => Array.from({ length: positionCount }, make);

/** An empty calendar for a season of at most `days` days. */
export function emptyCalendar(days: number): FruitCalendar {
  const numbers = () => new Float64Array(days);
  const dates = () => new Int16Array(days).fill(-1);
  return {
    dayCount: 0,
    nodes: numbers(),
    branches: numbers(),
    newBranches: numbers(),
    sites: perPosition(numbers),
    squareDay: perPosition(dates),
    flowerDay: perPosition(dates),
    squares: perPosition(numbers),
    flowers: perPosition(numbers),
    keptShare: perPosition(numbers),
    openDay: dates(),
    openAge: numbers(),
  };
}
