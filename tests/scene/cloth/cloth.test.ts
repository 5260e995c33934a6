import { describe, expect, test } from 'vitest';
import { cutEdge } from '../../../src/scene/cloth/cut-edge.ts';
import { grainOf } from '../../../src/scene/cloth/grain.ts';
import { inset } from '../../../src/scene/cloth/inset.ts';
import { offsetPath } from '../../../src/scene/cloth/offset-path.ts';
import type { Shown } from '../../../src/scene/cloth/part-cloth.ts';
import { partStitches } from '../../../src/scene/cloth/part-stitch.ts';
import { leafShape, seedShape } from '../../../src/scene/cloth/piece-shapes.ts';
import { distanceToOutline, isInside, place, rectangle, ring, signedArea } from '../../../src/scene/cloth/point.ts';
import { runningStitches, sidesOf } from '../../../src/scene/cloth/running-stitch.ts';
import { tuftOutline } from '../../../src/scene/cloth/tuft.ts';

const square = rectangle(0, 0, 200, 120);

describe('a cut edge', () => {
  test('is the same for the same name, and another for another name', () => {
    expect(cutEdge(square, 'patch')).toEqual(cutEdge(square, 'patch'));
    expect(cutEdge(square, 'patch')).not.toEqual(cutEdge(square, 'other'));
  });
  test('stays within its miss and bow of the outline it follows', () => {
    for (const point of cutEdge(square, 'near', { miss: 1.5, bow: 0.01 }))
      expect(distanceToOutline(point, square)).toBeLessThan(1.5 * Math.SQRT2 + 1.5 * 0.6 + 200 * 0.01);
  });
  test('keeps the area to within its own raggedness', () => {
    expect(Math.abs(signedArea(cutEdge(square, 'area')))).toBeGreaterThan(200 * 120 * 0.95);
    expect(Math.abs(signedArea(cutEdge(square, 'area')))).toBeLessThan(200 * 120 * 1.05);
  });
});

describe('a seam allowance', () => {
  const outlines = {
    square,
    turnedRound: [...square].reverse(),
    disc: ring(50, 50, 40, 13),
    leaf: place(leafShape, { x: 0, y: 0, size: 80 }),
    seed: place(seedShape, { x: 0, y: 0, size: 60, turn: 1 }),
    tuft: tuftOutline(0, 0, 50, 'tuft'),
  };
  test.each(Object.entries(outlines))('lies inside a %s, no nearer than 0.93 of its depth', (name, outline) => {
    const cut = cutEdge(outline, name, { miss: 0.8 });
    const inner = inset(cut, 6);
    expect(inner.length).toBeGreaterThan(3);
    for (const point of inner) {
      expect(isInside(point, cut)).toBe(true);
      expect(distanceToOutline(point, cut)).toBeGreaterThanOrEqual(6 * 0.93 - 1e-6);
    }
  });
  test('is exact on a square: corners of the square 6 px smaller all round', () => {
    expect(inset(square, 6)).toEqual([
      [6, 6],
      [194, 6],
      [194, 114],
      [6, 114],
    ]);
  });
  test('vanishes where the cloth is too narrow to sew', () => {
    expect(inset(rectangle(0, 0, 100, 8), 6)).toEqual([]);
  });
});

describe('a running stitch', () => {
  test('comes out even: every side of a square holds a whole number of stitches, half a gap at either end', () => {
    const stitches = runningStitches(square, 'even', { on: 8, off: 6, uneven: 0 });
    const pitch = 14;
    const expected = 2 * Math.round(200 / pitch) + 2 * Math.round(120 / pitch);
    expect(stitches).toHaveLength(expected);
    const top = stitches.filter(([, y0, , y1]) => y0 === 0 && y1 === 0);
    expect(top).toHaveLength(Math.round(200 / pitch));
    const starts = top.map(([x0]) => x0).sort((a, b) => a - b);
    const ends = top.map(([, , x1]) => x1).sort((a, b) => a - b);
    expect(starts[0]).toBeGreaterThan(0);
    expect(ends.at(-1)).toBeLessThan(200);
    // The two end gaps agree to within the hand's own unevenness.
    expect(Math.abs(starts[0]! - (200 - ends.at(-1)!))).toBeLessThan(3);
  });
  test('no stitch runs round a corner', () => {
    for (const [x0, y0, x1, y1] of runningStitches(square, 'corner', { uneven: 0 }))
      expect(Math.min(Math.abs(x1 - x0), Math.abs(y1 - y0))).toBeLessThan(1e-9);
  });
  test('a ring has no corners and is one side', () => {
    expect(sidesOf(ring(0, 0, 50, 36), true)).toHaveLength(1);
    expect(sidesOf(square, true)).toHaveLength(4);
  });
  test('is the same for the same name', () => {
    expect(runningStitches(square, 'a')).toEqual(runningStitches(square, 'a'));
    expect(runningStitches(square, 'a')).not.toEqual(runningStitches(square, 'b'));
  });
});

describe('part stitches', () => {
  const row: [number, number][] = [
    [0, 0],
    [260, 0],
  ];
  const all: Shown[] = ['lint', 'seed', 'burs', 'sticks', 'leaf', 'motes', 'dirt', 'size', 'finish', 'water'];
  test.each(all)('%s keeps to its row', (part) => {
    const stitches = partStitches(part, row, 'row');
    expect(stitches.length).toBeGreaterThan(5);
    for (const [x0, y0, x1, y1] of stitches) {
      for (const value of [x0, y0, x1, y1]) expect(Number.isFinite(value)).toBe(true);
      expect(Math.max(Math.abs(y0), Math.abs(y1))).toBeLessThanOrEqual(6);
      expect(Math.min(x0, x1)).toBeGreaterThan(-4);
      expect(Math.max(x0, x1)).toBeLessThan(264);
    }
  });
  test('differ in shape, not only in ink: no two parts give the same row', () => {
    const rows = new Set(all.map((part) => JSON.stringify(partStitches(part, row, 'row').slice(0, 4))));
    expect(rows.size).toBe(all.length);
  });
  test('French knots are stitches of no length', () => {
    for (const [x0, y0, x1, y1] of partStitches('seed', row, 'row')) expect([x0, y0]).toEqual([x1, y1]);
  });
});

describe('a mitred path', () => {
  test('keeps its distance on both sides of a fold', () => {
    const path: [number, number][] = [
      [0, 0],
      [100, 0],
      [100, 80],
    ];
    expect(offsetPath(path, 10)).toEqual([
      [0, 10],
      [90, 10],
      [90, 80],
    ]);
    expect(offsetPath(path, -10)).toEqual([
      [0, -10],
      [110, -10],
      [110, 80],
    ]);
  });
});

describe('grain', () => {
  test('lies inside its cloth', () => {
    const cloth = place(leafShape, { x: 100, y: 100, size: 150 });
    const { light, dark } = grainOf(cloth, 'leaf', 0.4);
    expect(light.length + dark.length).toBeGreaterThan(20);
    for (const [x0, y0, x1, y1] of [...light, ...dark]) {
      const middle: [number, number] = [(x0 + x1) / 2, (y0 + y1) / 2];
      expect(isInside(middle, cloth) || distanceToOutline(middle, cloth) < 1).toBe(true);
    }
  });
});

describe('a tuft', () => {
  test('has one size, for its size stands for a weight: no point beyond its radius, none near its middle', () => {
    for (const name of ['a', 'b', 'c', 'd'])
      for (const [x, y] of tuftOutline(0, 0, 20, name)) {
        expect(Math.hypot(x, y)).toBeLessThanOrEqual(20 * 1.06);
        expect(Math.hypot(x, y)).toBeGreaterThanOrEqual(20 * 0.5);
      }
  });
});
