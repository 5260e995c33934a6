import { describe, expect, test } from 'vitest';
import { flatMarks } from '../../../src/scene/display-list.ts';
import { cutStrips, cutStripsHeight } from '../../../src/scene/lessons/cut-strips.ts';
import { wordFaults } from '../../pages/season/pictures/scene-checks.ts';

const labels = {
  selvage: 'selvage on both sides',
  warp: 'warp',
  weft: 'weft',
  asCut: 'As cut',
  pulled: 'Pulled: 37% longer',
};
const drawn = (width: number) => cutStrips({ width, fromWarp: Math.PI / 4, angle: 0.6, stretchPercent: 37, labels });

describe.each([300, 366, 429, 560])('at %i px', (width) => {
  test('all words keep apart and in the picture', () => {
    const frame = { width, height: cutStripsHeight(width), still: drawn(width), over: [], parts: [], moving: [] };
    expect(wordFaults({ ...frame, lapSeconds: 1 })).toEqual([]);
  });
  test('warp and weft of the bolt and of both strips are counted groups, and the pulled strip is the longer', () => {
    const patches = [...flatMarks(drawn(width))].flatMap((mark) => (mark.kind === 'patch' ? [mark.points] : []));
    const wide = (points: readonly (readonly [number, number])[]) =>
      Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x));
    const [cut, pulled] = patches.slice(-2).map(wide);
    expect(pulled! / cut!).toBeGreaterThan(1.3);
  });
});
