import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Point } from '../../src/scene/display-list.ts';
import { railOf } from '../../src/scene/rail.ts';

/** Where a rail sets a piece down. */
function carried(path: readonly Point[], alongs: readonly number[]): Point[] {
  const rail = railOf(path);
  return alongs.map((along) => {
    let at: Point = [Number.NaN, Number.NaN];
    rail.carry({ set: (x, y) => (at = [x, y]) }, along);
    return at;
  });
}

// Straight sides of a right triangle 3, 4, 5 (Pythagoras).
const triangle: readonly Point[] = [
  [0, 0],
  [30, 40],
  [30, 0],
];

test('a piece is set down at its length along the path, forward, over the end and back to the start', () => {
  expect(railOf(triangle).length).toBe(90);
  expect(carried(triangle, [0, 25, 50, 70, 90, 10])).toEqual([
    [0, 0],
    [15, 20],
    [30, 40],
    [30, 20],
    [30, 0],
    [6, 8],
  ]);
});

test('before the start and beyond the end it is held; one point or none stands still', () => {
  expect(carried(triangle, [-5, 200])).toEqual([
    [0, 0],
    [30, 0],
  ]);
  expect(carried([[7, 8]], [0, 12])).toEqual([
    [7, 8],
    [7, 8],
  ]);
  expect(carried([], [3])).toEqual([[0, 0]]);
  expect(
    carried(
      [
        [5, 5],
        [5, 5],
        [5, 15],
      ],
      [0, 4],
    ),
  ).toEqual([
    [5, 5],
    [5, 9],
  ]);
});

test('however a path folds, the way to a piece is as long as asked, in any order of asking', () => {
  const corner = fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: -500, max: 500 }));
  const shares = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(fc.array(corner, { minLength: 2, maxLength: 9 }), shares, (path, asked) => {
      const { length } = railOf(path);
      const alongs = asked.map((share) => (share / 1000) * length);
      carried(path, alongs).forEach((at, i) => {
        // Cut there, the path is made of whole sides up to the one the piece lies on, and the rest of the way to it.
        let before = 0;
        const ways = path.slice(1).map((to, side) => {
          const from = path[side]!;
          const span = Math.hypot(to[0] - from[0], to[1] - from[1]);
          const reach = Math.hypot(at[0] - from[0], at[1] - from[1]);
          const onSide = Math.abs(reach + Math.hypot(to[0] - at[0], to[1] - at[1]) - span) < 1e-6;
          const way = onSide ? before + reach : Number.NaN;
          before += span;
          return way;
        });
        expect(ways.some((way) => Math.abs(way - alongs[i]!) < 1e-6)).toBe(true);
      });
    }),
  );
});
