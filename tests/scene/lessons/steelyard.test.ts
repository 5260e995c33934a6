import { expect, test } from 'vitest';
import { groupsOf } from '../../../src/scene/display-list.ts';
import { steelyardMarks } from '../../../src/scene/lessons/steelyard.ts';

const labels = { sack: '50 lb', poise: '10 lb', hookArm: '2 in', poiseArm: '10 in' };
const middleOf = (poiseIn: number) => {
  const list = steelyardMarks({ width: 400, hookIn: 2, poiseIn, beamIn: 20, full: 0.5, labels });
  const poise = [...groupsOf(list)].find(({ name }) => name === 'poise')!;
  const points = poise.marks.flatMap((mark) => (mark.kind === 'patch' ? mark.points : []));
  return points.reduce((sum, [x]) => sum + x, 0) / points.length;
};

test('the poise moves out by equal steps for equal weights', () => {
  expect(middleOf(15) - middleOf(10)).toBeCloseTo(middleOf(10) - middleOf(5), 6);
});
