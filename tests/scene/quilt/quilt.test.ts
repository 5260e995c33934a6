import { describe, expect, test } from 'vitest';
import { stationIds } from '../../../src/model/station.ts';
import { boundsOf, signedArea } from '../../../src/scene/cloth/point.ts';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { blockMarks } from '../../../src/scene/quilt/block-marks.ts';
import { blockOf } from '../../../src/scene/quilt/blocks.ts';
import { quiltCells, quiltMarks } from '../../../src/scene/quilt/quilt.ts';

describe.each(stationIds)('the %s block', (station) => {
  test('is cut inside the unit square, and no piece is empty', () => {
    for (const piece of blockOf(station)) {
      for (const [x, y] of piece.points) {
        expect(x).toBeGreaterThanOrEqual(-0.05);
        expect(x).toBeLessThanOrEqual(1.05);
        expect(y).toBeGreaterThanOrEqual(-0.05);
        expect(y).toBeLessThanOrEqual(1.05);
      }
      expect(Math.abs(signedArea(piece.points))).toBeGreaterThan(1e-4);
    }
  });
  test('covers its square', () => {
    const sum = blockOf(station).reduce((area, piece) => area + Math.abs(signedArea(piece.points)), 0);
    expect(sum).toBeGreaterThan(0.97);
  });
  test('is the same every time, and its three states are three pictures', () => {
    const box = { x: 10, y: 10, width: 120, height: 120 };
    const pictures = (['chalked', 'pinned', 'sewn'] as const).map((state) =>
      JSON.stringify(blockMarks(station, state, box)),
    );
    expect(new Set(pictures).size).toBe(3);
    expect(JSON.stringify(blockMarks(station, 'sewn', box))).toBe(pictures[2]);
  });
  test('chalk alone draws what is not yet decided', () => {
    const inks = [...flatMarks(blockMarks(station, 'chalked', { x: 0, y: 0, width: 90, height: 90 }))].map(
      (mark) => mark.ink,
    );
    expect(new Set(inks)).toEqual(new Set(['muslin', 'chalk']));
  });
});

describe.each([
  ['portrait', 3],
  ['landscape', 4],
  ['row', 12],
] as const)('the quilt laid out as %s', (layout, columns) => {
  const box = { x: 5, y: 7, width: layout === 'row' ? 600 : 480, height: layout === 'row' ? 60 : 520 };
  test('holds twelve blocks that stay inside it and apart from each other', () => {
    const cells = quiltCells({ layout, box });
    expect(cells.map(({ station }) => station)).toEqual(stationIds);
    cells.forEach(({ block }, i) => {
      expect(block.x).toBeGreaterThan(box.x);
      expect(block.x + block.width).toBeLessThan(box.x + box.width);
      expect(block.y).toBeGreaterThan(box.y);
      expect(block.y + block.height).toBeLessThan(box.y + box.height);
      const next = cells[i + 1];
      if (next && (i + 1) % columns !== 0) expect(next.block.x).toBeGreaterThan(block.x + block.width);
    });
  });
  test('names each block after its station', () => {
    const marks = quiltMarks({ layout, box, stateOf: () => 'sewn' });
    expect([...groupsOf(marks)].map(({ name }) => name)).toEqual([...stationIds]);
  });
  test('blocks keep to their cells', () => {
    const cells = quiltCells({ layout, box });
    const marks = [...groupsOf(quiltMarks({ layout, box, stateOf: () => 'sewn' }))];
    cells.forEach(({ block }, i) => {
      const points = [...flatMarks(marks[i]!.marks)].flatMap((mark) => (mark.kind === 'patch' ? mark.points : []));
      const drawn = boundsOf(points);
      const slack = block.width * 0.06;
      expect(drawn.x).toBeGreaterThan(block.x - slack);
      expect(drawn.x + drawn.width).toBeLessThan(block.x + block.width + slack);
    });
  });
});
