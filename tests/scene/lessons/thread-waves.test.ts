import { describe, expect, test } from 'vitest';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { heightOfWave, threadWaves } from '../../../src/scene/lessons/thread-waves.ts';
import { wordFaults } from '../../pages/season/pictures/scene-checks.ts';

const drawn = (width: number) =>
  threadWaves({
    width,
    crossings: 10,
    diameterIn: 0.0067,
    crossingDiameterIn: 0.0067,
    rows: [
      { key: 'bought', name: 'Before the first wash', spacingIn: 1 / 68, crimpPercent: 6 },
      { key: 'washed', name: 'After it: 3% shorter', spacingIn: 0.97 / 68, crimpPercent: (1.06 / 0.97 - 1) * 100 },
    ],
    straight: 'The thread of either, drawn straight',
  });

/** Length of the thread in a row, px, and how far it reaches. */
function threadOf(width: number, name: string) {
  const group = [...groupsOf(drawn(width).marks)].find((each) => each.name === name)!;
  const last = [...flatMarks(group.marks)].at(-1)!;
  if (last.kind !== 'stitches') throw new Error('no thread');
  const length = last.stitches.reduce((sum, [x0, y0, x1, y1]) => sum + Math.hypot(x1 - x0, y1 - y0), 0);
  return { length, reach: last.stitches.at(-1)![2] - last.stitches[0]![0] };
}

describe.each([300, 366, 560])('at %i px', (width) => {
  test('all words keep apart and in the picture', () => {
    const { marks, height } = drawn(width);
    const frame = { width, height, still: marks, over: [], parts: [], moving: [], lapSeconds: 1 };
    expect(wordFaults(frame)).toEqual([]);
  });
  test('the thread is as long before as after and when straight, and the washed cloth reaches less far', () => {
    const [bought, washed] = [threadOf(width, 'bought/thread'), threadOf(width, 'washed/thread')];
    const straight = threadOf(width, 'straight');
    expect(washed.length).toBeCloseTo(bought.length, 1);
    expect(straight.length).toBeCloseTo(bought.length, 1);
    expect(washed.reach / bought.reach).toBeCloseTo(0.97, 6);
  });
});

test('closed form for low waves: a sine that is 0.25 % longer than its base is 2/pi x root(0.0025) of it high', () => {
  expect(heightOfWave(1, 0.25)).toBeCloseTo((2 / Math.PI) * Math.sqrt(0.0025), 4);
});
