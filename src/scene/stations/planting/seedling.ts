import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point } from '../../display-list.ts';

/** Below this share of its way a seed only swells; then it roots; then it lifts its neck. */
const ROOTS_FROM = 0.14;
const RISES_FROM = 0.46;
/** A seed that never comes up stops somewhere before its neck would lift. */
const STOPS_BEFORE = 0.4;

export interface SeedPlace {
  /** Middle of the seed, px. */
  readonly x: number;
  readonly y: number;
  readonly soilY: number;
  /** From its middle to its edge, px. */
  readonly size: number;
  /** Longest its root may be drawn, px. */
  readonly mostRootPx?: number;
}

/** How far one seed has come on its own way, when the row has come so far; a seed that does not come up stays behind. */
export function wayOf(name: string, rowShare: number, comesUp: boolean): number {
  const chance = chanceOf(`${name}/way`);
  // Quick ones and slow ones: all are up together at the end.
  const way = rowShare ** (0.75 + 0.6 * chance());
  return comesUp ? way : Math.min(way, STOPS_BEFORE * chance());
}

/**
 * A seed under the soil: lying, rooting, or with its neck bent under the crust and its seed coat on its head.
 * @param way from planting (0) to breaking the soil (1)
 */
export function seedlingMarks(
  name: string,
  { x, y, soilY, size, mostRootPx = Number.POSITIVE_INFINITY }: SeedPlace,
  way: number,
): Mark[] {
  const chance = chanceOf(name);
  const wide = Math.max(2.2, size * 0.34);
  const marks: Mark[] = [];
  const root = Math.min(1, Math.max(0, (way - ROOTS_FROM) / 0.6));
  if (root > 0) marks.push(rootMark(name, [x, y], Math.min(mostRootPx, size * 3.1) * (0.3 + 0.7 * root), wide));
  const rise = Math.min(1, Math.max(0, (way - RISES_FROM) / (1 - RISES_FROM)));
  if (rise > 0) {
    const headY = y - (y - soilY - size * 0.5) * rise;
    const side = spread(chance, 1) < 0 ? -1 : 1;
    const neck: Point[] = [
      [x, y],
      [x - side * size * 0.15, headY + size * 0.7],
      [x + side * size * 0.1, headY],
      [x + side * size * 0.6, headY - size * 0.05],
      [x + side * size * 0.78, headY + size * 0.5],
    ];
    marks.push(
      strip(`${name}/neck`, neck, wide, wide * 0.9),
      ...pieceMarks('seed', name, {
        x: x + side * size * 0.8,
        y: headY + size * 0.95,
        size: size * 0.82,
        turn: Math.PI + side * 0.2,
      }),
    );
    return marks;
  }
  // Swelling seed is a little larger than dry seed.
  const swollen = size * (0.9 + 0.1 * Math.min(1, way / ROOTS_FROM));
  marks.push(...pieceMarks('seed', name, { x, y, size: swollen, turn: spread(chance, 0.9) + Math.PI }));
  return marks;
}

/** What stays below a plant that is up: its root and the pale foot of its stem. */
export const risenMarks = (
  name: string,
  { x, y, soilY, size, mostRootPx = Number.POSITIVE_INFINITY }: SeedPlace,
): Mark[] => {
  const wide = Math.max(2.2, size * 0.34);
  return [
    rootMark(name, [x, y], Math.min(mostRootPx, size * 3.1), wide),
    strip(
      `${name}/foot`,
      [
        [x, y + 1],
        [x + size * 0.06, soilY - 1],
      ],
      wide,
      wide,
    ),
  ];
};

function rootMark(name: string, [x, y]: Point, length: number, wide: number): Mark {
  const lean = spread(chanceOf(`${name}/lean`), length * 0.12);
  return strip(
    `${name}/root`,
    [
      [x, y],
      [x + lean, y + length * 0.5],
      [x + lean * 0.4, y + length],
    ],
    wide,
    wide * 0.35,
  );
}

const strip = (name: string, points: readonly Point[], from: number, to: number): Mark =>
  patch(name, taperedStrip(points, from, to), 'muslin', { shadow: 1.2, seam: 0, grain: null, scissors: 'asDrawn' });
