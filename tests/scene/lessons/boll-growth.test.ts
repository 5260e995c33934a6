import { expect, test } from 'vitest';
import { flatMarks, groupsOf, type Mark } from '../../../src/scene/display-list.ts';
import { bollGrowth } from '../../../src/scene/lessons/boll-growth.ts';

const rule = {
  mm: 38.1,
  ticks: [
    { mm: 0, text: '0' },
    { mm: 25.4, text: '1' },
  ],
};
const labels = { boll: 'boll', section: 'fiber' };
const drawn = (mm: number, wall: number) =>
  bollGrowth({ fibre: { mm, length: mm / 28, wall }, rule, seeds: 27, labels }, 480);
const reachOf = (marks: readonly Mark[]): number => {
  const fibres = [...groupsOf(marks)].find(({ name }) => name === 'fibres')!;
  return Math.max(
    ...[...flatMarks(fibres.marks)].flatMap((mark) => (mark.kind === 'stitches' ? mark.stitches.map((s) => s[2]) : [])),
  );
};

test('fibers on the rule grow with their length', () => {
  expect(reachOf(drawn(25.4, 0.4))).toBeGreaterThan(reachOf(drawn(12.7, 0.1)) + 100);
});

test('every seed is drawn, and the words of both', () => {
  const texts = drawn(20, 0.2).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  for (const label of Object.values(labels)) expect(texts).toContain(label);
});
