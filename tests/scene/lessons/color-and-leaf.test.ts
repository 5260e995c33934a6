import { expect, test } from 'vitest';
import { chartBorders } from '../../../src/lessons/graded-samples.ts';
import { signedArea } from '../../../src/scene/cloth/point.ts';
import { groupsOf } from '../../../src/scene/display-list.ts';
import { colorAndLeaf } from '../../../src/scene/lessons/color-and-leaf.ts';

test.each([0.2, 0.9])('leaf bits cover %d per cent of the sample', (trashPercent) => {
  const list = colorAndLeaf(
    {
      chart: { ...chartBorders, at: { rd: 76, b: 8.6 }, others: [] },
      trashPercent,
      labels: { chart: 'a', sample: 'b' },
    },
    480,
  );
  const leaf = [...groupsOf(list)].find(({ name }) => name === 'leaf')!;
  const covered = leaf.marks.reduce(
    (sum, mark) => sum + (mark.kind === 'patch' ? Math.abs(signedArea(mark.points)) : 0),
    0,
  );
  const sample = list.filter((mark) => mark.kind === 'patch').at(-1)!;
  expect((100 * covered) / Math.abs(signedArea(sample.points))).toBeCloseTo(trashPercent, 1);
});
