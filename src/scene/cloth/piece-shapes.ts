import type { Point } from '../display-list.ts';

/** Outlines of the counted pieces, about one unit from the middle to the edge, pointing up. */
export const seedShape: readonly Point[] = [
  [0.02, -1],
  [0.3, -0.56],
  [0.54, -0.02],
  [0.5, 0.5],
  [0.2, 0.86],
  [-0.18, 0.88],
  [-0.5, 0.52],
  [-0.56, 0],
  [-0.3, -0.54],
];

/** A bur is one wall of the dry boll: a claw. */
export const burShape: readonly Point[] = [
  [-0.28, 0.94],
  [-0.66, 0.3],
  [-0.64, -0.4],
  [-0.2, -0.86],
  [0.36, -1.02],
  [0.04, -0.5],
  [0.04, 0],
  [0.28, 0.46],
  [0.34, 0.86],
];

/** A stick with the stub of a fork. */
export const stickShape: readonly Point[] = [
  [-0.12, 1],
  [-0.15, 0.02],
  [-0.5, -0.42],
  [-0.34, -0.56],
  [-0.1, -0.3],
  [-0.09, -1.02],
  [0.13, -0.98],
  [0.16, 1.02],
];

/**
 * Cotton leaf: heart-shaped at the base, three broad lobes that swell before they come to a point, and a small pointed one
 * low on each side. The petiole joins at the notch.
 */
const leafHalf: readonly Point[] = [
  [0, 0.42],
  [0.1, 0.68],
  [0.34, 0.84],
  [0.64, 0.76],
  [0.98, 0.5],
  [0.86, 0.22],
  [0.99, -0.04],
  [1.12, -0.5],
  [0.74, -0.46],
  [0.38, -0.32],
  [0.46, -0.64],
  [0.3, -0.94],
  [0, -1.3],
];
const mirrored = (half: readonly Point[]): Point[] => [
  ...half,
  ...half
    .slice(1, -1)
    .reverse()
    .map(([x, y]): Point => [-x, y]),
];
export const leafShape: readonly Point[] = mirrored(leafHalf);
/** Where a leaf's veins end; they start at the notch. */
export const leafVeins: readonly Point[] = [
  [0, -1.04],
  [0.88, -0.32],
  [-0.88, -0.32],
  [0.74, 0.4],
  [-0.74, 0.4],
];

/** The first true leaves are plain hearts. */
export const youngLeafShape: readonly Point[] = mirrored([
  [0, 0.5],
  [0.22, 0.72],
  [0.6, 0.68],
  [0.84, 0.34],
  [0.72, -0.14],
  [0.4, -0.6],
  [0, -1],
]);
export const youngLeafVeins: readonly Point[] = [
  [0, -0.7],
  [0.5, -0.12],
  [-0.5, -0.12],
];

/** A seed leaf: a kidney, wider than long, on its stalk at the notch. */
export const seedLeafShape: readonly Point[] = mirrored([
  [0, 0.24],
  [0.34, 0.5],
  [0.82, 0.38],
  [1.04, 0],
  [0.9, -0.38],
  [0.5, -0.6],
  [0, -0.58],
]);

export const dropShape: readonly Point[] = [
  [0.02, -1.16],
  [0.38, -0.46],
  [0.68, 0.16],
  [0.56, 0.64],
  [0.18, 0.9],
  [-0.24, 0.88],
  [-0.58, 0.6],
  [-0.68, 0.14],
  [-0.36, -0.48],
];

/** A mote is a seed that never filled: a flat knot that trails a wisp of fibre. */
export const moteShape: readonly Point[] = [
  [-0.5, 0.1],
  [-0.1, 0],
  [0.2, 0.24],
  [0.22, 0.66],
  [-0.14, 0.94],
  [-0.6, 0.86],
  [-0.78, 0.46],
];
export const moteHairs: readonly (readonly Point[])[] = [
  [
    [-0.4, 0.2],
    [-0.36, -0.3],
    [0, -0.76],
    [0.46, -0.98],
  ],
  [
    [-0.16, 0.2],
    [0, -0.2],
    [0.36, -0.5],
    [0.84, -0.62],
  ],
  [
    [0.06, 0.3],
    [0.34, 0],
    [0.66, -0.14],
    [0.96, -0.14],
  ],
];

/** Dirt is loose chips. */
export const dirtChips: readonly (readonly Point[])[] = [
  [
    [-0.86, -0.1],
    [-0.5, -0.74],
    [-0.02, -0.5],
    [-0.12, 0.06],
    [-0.6, 0.2],
  ],
  [
    [0.22, -0.86],
    [0.74, -0.6],
    [0.66, -0.1],
    [0.2, -0.2],
  ],
  [
    [-0.34, 0.42],
    [0.2, 0.24],
    [0.46, 0.66],
    [0.06, 1],
    [-0.36, 0.86],
  ],
  [
    [0.6, 0.14],
    [0.96, 0.3],
    [0.72, 0.54],
  ],
];

/** Warp size: a chip of wax. Finish: a snip of cloth with pinked corners. */
export const sizeShape: readonly Point[] = [
  [-0.5, -0.8],
  [0.52, -0.82],
  [0.92, -0.1],
  [0.56, 0.72],
  [-0.48, 0.74],
  [-0.94, 0],
];
export const finishShape: readonly Point[] = [
  [-0.84, -0.56],
  [-0.28, -0.8],
  [0.04, -0.52],
  [0.5, -0.84],
  [0.86, -0.4],
  [0.8, 0.6],
  [0.3, 0.84],
  [-0.06, 0.56],
  [-0.5, 0.82],
  [-0.88, 0.44],
];

/** A hank: two loops of yarn with the twist between them, and the turns drawn on it. */
export const hankShape: readonly Point[] = [
  [-0.96, -0.1],
  [-0.74, -0.52],
  [-0.3, -0.5],
  [0, -0.24],
  [0.3, -0.5],
  [0.74, -0.52],
  [0.96, -0.1],
  [0.94, 0.16],
  [0.7, 0.54],
  [0.3, 0.5],
  [0, 0.24],
  [-0.3, 0.5],
  [-0.7, 0.54],
  [-0.94, 0.16],
];
export const hankTurns: readonly (readonly [Point, Point])[] = [
  [
    [-0.14, -0.18],
    [0.14, 0.18],
  ],
  [
    [-0.66, -0.26],
    [-0.34, -0.2],
  ],
  [
    [-0.7, 0],
    [-0.34, 0.02],
  ],
  [
    [-0.64, 0.28],
    [-0.34, 0.22],
  ],
  [
    [0.34, -0.22],
    [0.66, -0.26],
  ],
  [
    [0.34, 0],
    [0.7, 0.02],
  ],
  [
    [0.34, 0.22],
    [0.64, 0.28],
  ],
];

/** A snip of cloth with pinked ends, and the rows of its weft. */
export const snipShape: readonly Point[] = [
  [-0.8, -0.6],
  [-0.52, -0.82],
  [-0.26, -0.62],
  [0, -0.84],
  [0.26, -0.62],
  [0.52, -0.82],
  [0.8, -0.6],
  [0.76, 0.62],
  [0.5, 0.84],
  [0.24, 0.64],
  [-0.02, 0.84],
  [-0.28, 0.62],
  [-0.54, 0.82],
  [-0.78, 0.6],
];
export const snipRows: readonly (readonly [Point, Point])[] = [-0.34, 0, 0.34].map(
  (y, row): readonly [Point, Point] => [
    [row % 2 ? -0.34 : -0.5, y],
    [row % 2 ? 0.5 : 0.34, y],
  ],
);
