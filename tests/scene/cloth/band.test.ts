import { describe, expect, test } from 'vitest';
import { type BandStrip, bandMarks, bandWidth, THREAD_BELOW_PX } from '../../../src/scene/cloth/band.ts';
import { boundsOf } from '../../../src/scene/cloth/point.ts';
import { flatMarks, groupsOf, type Mark, type Point } from '../../../src/scene/display-list.ts';

const straight: Point[] = [
  [0, 100],
  [300, 100],
];
const strips: BandStrip[] = [
  { part: 'lint', width: 40 },
  { part: 'seed', width: 55.5 },
  { part: 'leaf', width: 3.25 },
  { part: 'burs', width: 0.6 },
  { part: 'water', width: 9 },
];

/** Depth of a group's patches, px. */
function depthOf(marks: readonly Mark[], name: string): number {
  const found = [...groupsOf(marks)].find((candidate) => candidate.name === name)!;
  const points = [...flatMarks(found.marks)].flatMap((mark) => (mark.kind === 'patch' ? mark.points : []));
  return boundsOf(points).height;
}

describe('a band', () => {
  test('is as wide as its mass times the scale, strip by strip', () => {
    const marks = bandMarks('band', straight, strips, { rowPx: 20 });
    for (const strip of strips.filter(({ width }) => width >= THREAD_BELOW_PX))
      expect(depthOf(marks, `band/${strip.part}`)).toBeCloseTo(strip.width, 9);
    const all = [...flatMarks(marks)].flatMap((mark) => (mark.kind === 'patch' ? mark.points : []));
    expect(boundsOf(all).height).toBeCloseTo(bandWidth(strips), 9);
  });
  test('keeps its width through a fold', () => {
    const path: Point[] = [
      [50, 0],
      [50, 200],
      [400, 200],
    ];
    const marks = bandMarks('fold', path, [{ part: 'seed', width: 60 }], { rowPx: 1000 });
    const seed = [...groupsOf(marks)].find((candidate) => candidate.name === 'fold/seed')!;
    const [down, along] = [...flatMarks(seed.marks)].filter((mark) => mark.kind === 'patch');
    if (down?.kind !== 'patch' || along?.kind !== 'patch') throw new Error('two lengths of cloth were expected');
    expect(boundsOf(down.points).width).toBeCloseTo(60, 9);
    expect(boundsOf(along.points).height).toBeCloseTo(60, 9);
  });
  test('below 2 px it is one thread, never a thicker lie', () => {
    const marks = bandMarks('thin', straight, [{ part: 'motes', width: 1.4 }], { rowPx: 20 });
    expect([...flatMarks(marks)].some((mark) => mark.kind === 'patch')).toBe(false);
    const thread = [...flatMarks(marks)].find((mark) => mark.kind === 'stitches');
    expect(thread?.kind === 'stitches' ? thread.width : Number.NaN).toBeLessThanOrEqual(THREAD_BELOW_PX);
  });
  test('no mass, no band', () => {
    expect(bandMarks('none', straight, [{ part: 'lint', width: 0 }], { rowPx: 20 })).toEqual([]);
  });
  test('quilting rows lie one row of mass apart: a strip of 3.5 rows carries three', () => {
    const marks = bandMarks('rows', straight, [{ part: 'seed', width: 70 }], { rowPx: 20 });
    const seed = [...groupsOf(marks)].find((candidate) => candidate.name === 'rows/seed')!;
    const rows = [...flatMarks(seed.marks)].filter((mark) => mark.kind === 'stitches');
    expect(rows).toHaveLength(3);
  });
});
