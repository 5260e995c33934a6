import { expect, test } from 'vitest';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { threadRows } from '../../../src/scene/lessons/thread-rows.ts';

const thread = { diameterMm: 0.2, turnsPerMm: 0.8, cvPercent: 0, endsPerMm: 10, plies: 1 };
const rows = (plies: number, spun = true) =>
  threadRows({
    rows: [{ id: 'a', name: 'A', note: 'b', thread: spun ? { ...thread, plies } : null }],
    width: 500,
    times: 20,
    endsPerHair: 5,
    padPx: 60,
  });

test('a thread is as thick as its diameter times the magnification, at 96 px to the inch', () => {
  const outline = [...flatMarks([...groupsOf(rows(1))])].flatMap((mark) => (mark.kind === 'patch' ? mark.points : []));
  const tall = Math.max(...outline.map(([, y]) => y)) - Math.min(...outline.map(([, y]) => y));
  expect(tall).toBeCloseTo((0.2 * 20 * 96) / 25.4, 6);
});

test('one hair is drawn for so many ends of the stretch that is shown', () => {
  const hairs = [...flatMarks(rows(1))].find((mark) => mark.kind === 'stitches' && mark.width === 1.1)!;
  const mm = (500 - 10 - 16) / ((20 * 96) / 25.4);
  // A hair has a foot and a knee: two stitches.
  expect('stitches' in hairs && hairs.stitches.length).toBe(2 * Math.round((mm * 10) / 5));
});

test('plies wind round one another, and a thread that cannot be spun leaves a chalked place', () => {
  expect([...flatMarks(rows(3))].filter(({ kind }) => kind === 'stitches').length).toBeGreaterThanOrEqual(4);
  expect([...groupsOf(rows(1, false))][0]!.count).toBe(0);
});
