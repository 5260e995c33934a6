import { expect, test } from 'vitest';
import { boundsOf } from '../../../../src/scene/cloth/point.ts';
import { flatMarks, type Stitch } from '../../../../src/scene/display-list.ts';
import { slowed } from '../../../../src/scene/stations/slowed.ts';
import { fibresPerLine, twistedYarn } from '../../../../src/scene/stations/spinning/drafting.ts';

const tracerOf = (mark: ReturnType<typeof twistedYarn>): readonly Stitch[] =>
  [...flatMarks([mark])].flatMap((each) => (each.kind === 'stitches' && each.ink === 'madder' ? each.stitches : []));

test('the dyed fibre shows once in every turn, and the turns are as long as they are said to be', () => {
  // 21.4 turns in an inch: in a quarter inch of 400 px, 5.35 turns of 74.8 px.
  const turnPx = 400 / (21.4 / 4);
  const tracer = tracerOf(twistedYarn(0, 400, 50, 16, turnPx));
  const starts = tracer.filter((stitch, i) => i === 0 || stitch[0] - tracer[i - 1]![2] > 1).map(([x]) => x);
  expect(starts.length).toBe(6);
  for (const [i, x] of starts.slice(1).entries()) expect(x - starts[i]!).toBeCloseTo(turnPx, 6);
});

test('singles are twisted Z: on the front the fibre runs down to the right in a yarn that lies level', () => {
  for (const [x0, y0, x1, y1] of tracerOf(twistedYarn(0, 300, 50, 16, 60))) {
    expect(x1).toBeGreaterThan(x0);
    expect(y1).toBeGreaterThanOrEqual(y0);
  }
});

test('the yarn is as thick as it is said to be, but for its unevenness', () => {
  const body = [...flatMarks([twistedYarn(0, 300, 50, 20, 60)])].find((mark) => mark.kind === 'patch')!;
  const tall = body.kind === 'patch' ? boundsOf(body.points).height : 0;
  expect(tall).toBeGreaterThan(19);
  expect(tall).toBeLessThan(21.5);
});

test('every fibre has a line of its own as long as lines can be told apart', () => {
  expect([33, 105, 158, 180].map(fibresPerLine)).toEqual([1, 1, 1, 1]);
  expect(fibresPerLine(394)).toBe(3);
});

test('a motion is slowed by a round number until an eye can follow it', () => {
  expect(slowed(450)).toEqual({ perSecond: 450 / 60 / 20, times: 20 });
  expect(slowed(15_000)).toEqual({ perSecond: 0.5, times: 500 });
  expect(slowed(12)).toEqual({ perSecond: 0.2, times: 1 });
  for (const perMinute of [1, 33, 90, 600, 80_000]) expect(slowed(perMinute).perSecond).toBeLessThanOrEqual(0.55);
});
