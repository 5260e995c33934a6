import { patch } from '../../cloth/patch.ts';
import { type Box, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';
import type { Labour } from './harvest-input.ts';

const MINUTES_ROUND = 60;
/** Upwards from three o'clock, where a face begins. */
const NOON = -Math.PI / 2;
/** More suns than this would be dots. */
const MOST_SUNS = 40;

/** Suns or faces that a box holds, set in rows: how large, and where. */
function seatsFor(count: number, box: Box): { readonly radius: number; readonly at: (i: number) => Point } {
  let rows = 1;
  const radiusIn = (n: number) => Math.min(box.height / n / 2, box.width / Math.ceil(count / n) / 2);
  while (rows < 4 && radiusIn(rows + 1) > radiusIn(rows)) rows++;
  const radius = radiusIn(rows);
  const across = Math.ceil(count / rows);
  return {
    radius,
    at: (i) => [
      box.x + radius * (2 * (i % across) + 1),
      box.y + box.height / 2 + (Math.floor(i / across) - (rows - 1) / 2) * radius * 2,
    ],
  };
}

/** A slice of a disc from noon onwards; share 1 is the whole of it. */
function slice(x: number, y: number, radius: number, share: number): Point[] {
  if (share >= 1) return ring(x, y, radius, 14, NOON);
  const steps = Math.max(2, Math.ceil(share * 18));
  const rim = Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = NOON + (i / steps) * share * 2 * Math.PI;
    return [x + Math.cos(angle) * radius, y + Math.sin(angle) * radius];
  });
  return [[x, y], ...rim];
}

/** What stands still of the work's measure: a chalked place for each day, or the face of a clock. */
export function labourStill(name: string, labour: Labour, box: Box): Mark[] {
  const count = unitsOf(labour);
  const { radius, at } = seatsFor(count, box);
  return Array.from({ length: count }, (_, i): Mark[] => {
    const [x, y] = at(i);
    if (labour.kind === 'personDays') return [chalked(`${name}/${i}`, x, y, radius * 0.84)];
    const ticks = Array.from({ length: 12 }, (_, hour): Stitch => {
      const angle = (hour / 12) * 2 * Math.PI;
      const from = radius * (hour % 3 ? 0.76 : 0.68);
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      return [x + cos * from, y + sin * from, x + cos * radius * 0.84, y + sin * radius * 0.84];
    });
    return [
      patch(`${name}/face${i}`, ring(x, y, radius * 0.96, 16), 'muslin', {
        shadow: 2.6,
        seam: 0,
        grain: null,
        scissors: { miss: 0.6, snip: 60 },
      }),
      { kind: 'stitches', stitches: ticks, ink: 'ink', width: 1.7, flat: true },
    ];
  }).flat();
}

/** The work done so far: suns sewn on, or minutes on the clock. */
export function labourDone(name: string, labour: Labour, box: Box, share: number): Mark[] {
  const count = unitsOf(labour);
  const { radius, at } = seatsFor(count, box);
  const done = share * (labour.kind === 'personDays' ? labour.days : labour.minutes / MINUTES_ROUND);
  return Array.from({ length: count }, (_, i): Mark[] => {
    const part = Math.min(1, done - i);
    if (part <= 0.004) return [];
    const [x, y] = at(i);
    if (labour.kind === 'personDays')
      return [
        patch(`${name}/sun${i}`, slice(x, y, radius * 0.84, part), 'weld', {
          shadow: 2.6,
          seam: part >= 1 && radius > 15 ? radius * 0.2 : 0,
          grain: null,
          scissors: 'asDrawn',
          stitchery: { on: 5, off: 4 },
        }),
      ];
    const hand = NOON + part * 2 * Math.PI;
    return [
      patch(`${name}/minutes${i}`, slice(x, y, radius * 0.64, part), 'weld', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
      {
        kind: 'stitches',
        stitches: [[x, y, x + Math.cos(hand) * radius * 0.7, y + Math.sin(hand) * radius * 0.7]],
        ink: 'madder',
        width: Math.max(2, radius * 0.08),
      },
    ];
  }).flat();
}

/** Suns, one to a day begun; faces, one to an hour begun. */
const unitsOf = (labour: Labour): number =>
  Math.min(
    MOST_SUNS,
    Math.max(1, Math.ceil(labour.kind === 'personDays' ? labour.days : labour.minutes / MINUTES_ROUND)),
  );

const chalked = (name: string, x: number, y: number, radius: number): Mark => ({
  kind: 'stitches',
  stitches: runningStitches(ring(x, y, radius, 20, NOON), name, { on: 4, off: 4 }),
  ink: 'mid',
  width: 1.5,
  flat: true,
});
