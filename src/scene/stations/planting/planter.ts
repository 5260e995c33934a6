import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { type CropEdges, cropped } from './crop.ts';

/** A planter at work on one row, seen from the side, going to the right. */
export interface Planter {
  /** Where the seed leaves its tube. */
  readonly tube: Point;
  readonly soilY: number;
  /** How deep the seed lies, px. */
  readonly depthPx: number;
  /** Size of one unit of the drawing, px. */
  readonly unit: number;
  readonly pxPerFoot: number;
  readonly seedsPerFoot: number;
  /** Ground that passes in a second while the scene plays, px. */
  readonly pxPerSecond: number;
  readonly words: PlanterWords;
  /** What of the planter is past these is outside the picture. */
  readonly edges: CropEdges;
}

/** What the turning parts show, already translated, each with the row it rolls over in one turn. */
export interface PlanterWords {
  readonly opener: (feet: number) => string;
  readonly wheel: (feet: number) => string;
  readonly plate: string;
}

/** How a planter looks: what stands still on it, what turns, and the way of the seed. */
export interface DrawnPlanter {
  readonly parts: readonly MovingPart[];
  readonly body: readonly Mark[];
  /** From the seed plate down into the furrow. */
  readonly seedPath: readonly Point[];
}

/** Height above the soil, units. */
export const PLANTER_HEIGHT = 222;

type Ink = Parameters<typeof patch>[2];

/** Cuts the pieces of one planter, each by its name; what lies outside the picture is cut off. */
export const pieceCutter =
  ({ edges }: Planter) =>
  (name: string, points: readonly Point[], ink: Ink, seam: number): Mark[] => {
    const kept = cropped(points, edges);
    if (!kept) return [];
    return [
      patch(`planter/${name}`, kept, ink, { shadow: 4, seam, scissors: { miss: 1.2 }, grain: seam > 0 ? 0 : null }),
    ];
  };

/** Parts that turn, without those that are no longer wholly in the picture. */
export const partsInView = ({ edges }: Planter, parts: readonly MovingPart[]): MovingPart[] =>
  parts.filter(({ middle: [x], radius }) => x - radius > edges.left - 6 && x + radius < edges.right + 6);

/** A part that rolls with the ground. */
export function rollingPart(
  planter: Planter,
  name: string,
  middle: Point,
  radius: number,
  marks: readonly Mark[],
  shows: (feet: number) => string,
): MovingPart {
  const round = 2 * Math.PI * radius;
  return {
    name: `planter/${name}`,
    marks,
    middle,
    radius: radius + 6,
    motion: { kind: 'turn', turnsPerSecond: planter.pxPerSecond / round },
    passes: 'belowPieces',
    shows: shows(round / planter.pxPerFoot),
  };
}

/** A wheel with spokes of thread, so that its turning shows. */
export function wheelMarks(name: string, [x, y]: Point, radius: number, ink: Ink, spokes: number): Mark[] {
  return [
    patch(`planter/${name}`, ring(x, y, radius, 18), ink, {
      shadow: 0,
      seam: Math.max(3, radius * 0.14),
      scissors: { miss: 0.8 },
    }),
    {
      kind: 'stitches',
      stitches: Array.from({ length: spokes }, (_, i) => {
        const angle = (i / spokes) * 2 * Math.PI;
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        return [x + cos * radius * 0.3, y + sin * radius * 0.3, x + cos * radius * 0.74, y + sin * radius * 0.74];
      }),
      ink: 'thread',
      width: Math.max(1.6, radius * 0.06),
      flat: true,
    },
    patch(`planter/${name}/hub`, ring(x, y, radius * 0.24, 7), 'weld', { shadow: 0, seam: 0, grain: null }),
  ];
}

/** Cells of the seed plate: each lets one seed go. */
const CELLS = 10;

/** The seed plate in its housing: it turns as the planter rolls, one cell to each seed. */
export const platePart = (planter: Planter, middle: Point, radius: number): MovingPart => ({
  name: 'planter/plate',
  marks: [
    patch('planter/housing', ring(middle[0], middle[1], radius * 1.34, 14), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    ...plateMarks(middle, radius),
  ],
  middle,
  radius: radius * 1.34 + 6,
  motion: {
    kind: 'turn',
    turnsPerSecond: ((planter.pxPerSecond / planter.pxPerFoot) * planter.seedsPerFoot) / CELLS,
  },
  passes: 'belowPieces',
  shows: planter.words.plate,
});

const plateMarks = ([x, y]: Point, radius: number): Mark[] => [
  patch('planter/plate', ring(x, y, radius, 16), 'weld', {
    shadow: 0,
    seam: 0,
    grain: null,
    scissors: { miss: 0.6 },
  }),
  {
    kind: 'stitches',
    stitches: Array.from({ length: CELLS }, (_, i) => {
      const angle = (i / CELLS) * 2 * Math.PI;
      const [px, py] = [x + Math.cos(angle) * radius * 0.72, y + Math.sin(angle) * radius * 0.72];
      return [px, py, px, py];
    }),
    ink: 'walnut',
    width: radius * 0.22,
    flat: true,
  },
  {
    kind: 'stitches',
    stitches: runningStitches(ring(x, y, radius * 0.4, 16), 'planter/plate/ring', { on: 5, off: 4 }),
    ink: 'walnut',
    width: 1.6,
    flat: true,
  },
];

/** Seed in a hopper, as much as shows through its side. */
export const hopperSeeds = (planter: Planter, places: readonly (readonly [number, number])[]): Mark => {
  const { tube, soilY, unit, edges } = planter;
  const size = 11 * unit;
  return group(
    'hopperSeeds',
    places.flatMap(([dx, up], i) => {
      const x = tube[0] + dx * unit;
      if (x - size < edges.left || x + size > edges.right) return [];
      return pieceMarks('seed', `planter/seed${i}`, { x, y: soilY - up * unit, size, turn: i * 1.3 });
    }),
  );
};

/** A seed tube that can be looked into: two rails. */
export const tubeRails = ({ edges }: Planter, path: readonly [Point, Point], half: number): Mark[] =>
  [-half, half].flatMap((shift, i) => {
    const strip = taperedStrip(
      path.map(([x, y]): Point => [x + shift, y]),
      half * 0.5,
      half * 0.4,
    );
    const kept = cropped(strip, edges);
    return kept
      ? [patch(`planter/tube${i}`, kept, 'fadedPale', { shadow: 1.2, seam: 0, grain: null, scissors: 'asDrawn' })]
      : [];
  });

/** Where a hopper shows its seed: a window of muslin. */
export const windowSeeds: readonly (readonly [number, number])[] = [
  [-30, 186],
  [-8, 192],
  [14, 188],
  [36, 190],
  [-20, 168],
  [2, 172],
  [25, 170],
  [-8, 152],
  [14, 154],
  [3, 138],
];

/**
 * A planter of today: a hopper over its seed plate, a tube between disc openers with a gauge wheel, closing wheels behind, and
 * two links to the tool bar, on which the rows stand side by side.
 */
export function rowPlanter(planter: Planter): DrawnPlanter {
  const { tube, soilY, unit: u, depthPx, words } = planter;
  const x = tube[0];
  const cut = pieceCutter(planter);
  const at = (dx: number, up: number): Point => [x + dx * u, soilY - up * u];
  const shape = (points: readonly (readonly [number, number])[]): Point[] => points.map(([dx, up]) => at(dx, up));
  const discRadius = Math.max(depthPx * 0.5 + 20 * u, 46 * u);
  const disc: Point = [x + 26 * u, soilY + depthPx * 0.94 - discRadius];
  const gaugeRadius = 42 * u;
  const gauge: Point = [x - 18 * u, soilY - gaugeRadius + 2];
  const closeRadius = 29 * u;
  const close: Point = [x - 100 * u, soilY - closeRadius + 5 * u];
  const plate = at(4, 106);
  const strip = (from: readonly [number, number], to: readonly [number, number], wide: number) =>
    taperedStrip(shape([from, to]), wide * u, wide * u);
  return {
    seedPath: [[plate[0] + 6 * u, plate[1] + 18 * u], [x + 4 * u, soilY - 20 * u], tube],
    parts: partsInView(planter, [
      rollingPart(
        planter,
        'gauge',
        gauge,
        gaugeRadius,
        wheelMarks('gauge', gauge, gaugeRadius, 'iron', 6),
        words.wheel,
      ),
      rollingPart(
        planter,
        'closing',
        close,
        closeRadius,
        wheelMarks('closing', close, closeRadius, 'iron', 5),
        words.wheel,
      ),
      rollingPart(
        planter,
        'opener',
        disc,
        discRadius,
        wheelMarks('opener', disc, discRadius, 'indigo', 8),
        words.opener,
      ),
      platePart(planter, plate, 22 * u),
    ]),
    body: [
      group('planter', [
        ...cut('link/low', strip([46, 74], [132, 92], 9), 'indigoWarm', 0),
        ...cut('link/high', strip([46, 96], [132, 114], 9), 'indigoWarm', 0),
        ...cut(
          'shank',
          shape([
            [38, 128],
            [56, 128],
            [58, 66],
            [32, 34],
            [20, 34],
            [38, 68],
          ]),
          'indigoWarm',
          0,
        ),
        ...cut('tail', strip([44, 80], [-96, 58], 11), 'indigoWarm', 0),
        ...cut(
          'arm',
          shape([
            [-108, 64],
            [-90, 62],
            [-93, 24],
            [-105, 24],
          ]),
          'indigoWarm',
          0,
        ),
        ...cut(
          'bar',
          shape([
            [126, 82],
            [156, 82],
            [156, 124],
            [126, 124],
          ]),
          'iron',
          4 * u,
        ),
        ...tubeRails(planter, [at(6, 84), [x + 2 * u, tube[1] - 6 * u]], 8 * u),
        ...cut(
          'hopper',
          shape([
            [-34, 128],
            [40, 128],
            [72, 206],
            [-66, 206],
          ]),
          'madder',
          6 * u,
        ),
        ...cut(
          'lid',
          shape([
            [-74, 203],
            [80, 203],
            [74, 217],
            [-68, 218],
          ]),
          'iron',
          0,
        ),
        hopperSeeds(planter, windowSeeds),
      ]),
    ],
  };
}
