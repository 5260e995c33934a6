import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { PIECE_CUTS } from '../../cloth/piece.ts';
import { pathLength, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { MovingPart, MovingPiece } from '../../scene-frame.ts';

export interface FieldWeather {
  /** Heat units of the day, base 60 °F: the size of the sun. */
  readonly dd60: number;
  readonly rainInches: number;
  readonly irrigationInches: number;
}

/** Most drops drawn at once: beyond it the picture is only wet. */
const MOST_DROPS = 60;
/** From here on the sky is covered. */
const HEAVY_RAIN_INCHES = 0.3;
/** A day this hot has the biggest sun, DD60. */
const HOTTEST_DD60 = 34;

/** Drops for so much water over the field, each a stated depth of it. */
export const dropsOf = (inches: number, dropInches: number): number =>
  Math.min(MOST_DROPS, Math.round(inches / dropInches));

/** The sun: as big as the day's heat, and its ring goes round with it, once for every hundred units in a second. */
export function sunPart(at: Point, mostPx: number, dd60: number, shows: string): MovingPart {
  const share = Math.min(1, Math.max(0, dd60 / HOTTEST_DD60));
  const radius = Math.round(mostPx * (0.42 + 0.58 * share));
  const face = radius * 0.74;
  const [x, y] = at;
  return {
    name: `sun/${radius}`,
    marks: [
      patch('sun', ring(x, y, face, 13, 0.2), 'weld', {
        shadow: 0,
        seam: Math.max(4, face * 0.16),
        thread: 'walnut',
        scissors: { miss: 1 },
      }),
      {
        kind: 'stitches',
        stitches: runningStitches(ring(x, y, radius * 0.94, 30), 'sun/ring', { on: radius * 0.17, off: radius * 0.2 }),
        ink: 'weldOnIron',
        width: Math.max(2, radius * 0.06),
        flat: true,
      },
    ],
    middle: at,
    radius: radius + 4,
    motion: { kind: 'turn', turnsPerSecond: Math.max(0, dd60) / 100 },
    passes: 'belowPieces',
    shows,
  };
}

/** A shower brings a small cloud, an inch of rain the whole sky. */
export function cloudMarks(
  from: Point,
  to: { readonly x: number; readonly depth: number },
  rainInches: number,
): Mark[] {
  if (rainInches <= 0) return [];
  const width = to.x - from[0];
  const deep = to.depth * (0.55 + 0.45 * Math.min(1, rainInches));
  const cloud = (name: string, start: number, end: number, ink: 'indigo' | 'mid', drop: number): Mark => {
    const bottom: Point[] = [];
    const bumps = Math.max(3, Math.round(((end - start) * width) / (to.depth * 0.9)));
    for (let i = bumps; i >= 0; i--)
      bottom.push([
        from[0] + width * (start + ((end - start) * i) / bumps),
        from[1] + deep * (drop + (i % 2 ? 0.45 : 0.05)),
      ]);
    return patch(name, [[from[0] + width * start, from[1] - 1], [from[0] + width * end, from[1] - 1], ...bottom], ink, {
      shadow: 4,
      seam: 7,
      scissors: { miss: 1.6 },
    });
  };
  return [
    ...(rainInches >= HEAVY_RAIN_INCHES ? [cloud('cloud/left', 0, 0.72, 'indigo', 0.55)] : []),
    cloud('cloud/right', rainInches >= HEAVY_RAIN_INCHES ? 0.4 : 0.3, 1, 'mid', 0.4),
  ];
}

/**
 * Water on its way: the day's rain falling, or irrigation running in along the furrow.
 * @param paths from where each drop comes to where it goes; used by turns
 * @param standsForKg the water of one drop over the ground in the picture, kg
 */
export function dropPieces(
  band: 'rain' | 'irrigation',
  count: number,
  size: number,
  standsForKg: number,
  pathOf: (share: number, name: string) => readonly Point[],
): MovingPiece[] {
  return Array.from({ length: count }, (_, i): MovingPiece => {
    const name = `${band}/${i}`;
    const path = pathOf((i + 0.5) / count, name);
    return {
      name,
      band,
      part: 'water',
      form: 'tuft',
      cut: i % PIECE_CUTS,
      standsForKg,
      path,
      restPx: pathLength(path) * chanceOf(`${name}/rest`)(),
      size,
    };
  });
}

/** Where the rain falls between two edges, slanting with the wind. */
export const rainPath =
  (fromX: number, toX: number, topY: number, groundY: number) =>
  (share: number, name: string): readonly Point[] => {
    const half = ((toX - fromX) / MOST_DROPS) * 0.4;
    const x = fromX + (toX - fromX) * share + spread(chanceOf(name), half);
    const slant = (groundY - topY) * 0.16;
    return [
      [Math.min(toX, x + slant / 2), topY],
      [Math.max(fromX, x - slant / 2), groundY],
    ];
  };
