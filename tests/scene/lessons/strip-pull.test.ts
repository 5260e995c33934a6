import { expect, test } from 'vitest';
import { stripAsCut, stripPulled } from '../../../src/scene/lessons/strip-pull.ts';

const angle = 0.5;
const sheared = (fromWarp: number) => 100 * (Math.sqrt(1 + Math.sin(2 * fromWarp) * Math.cos(angle)) - 1);
const strip = (fromWarp: number, stretchPercent: number) =>
  ({ length: 200, width: 40, fromWarp, pitchPx: 8, angle, stretchPercent }) as const;
const lengthOf = ([x0, y0, x1, y1]: readonly [number, number, number, number]) => Math.hypot(x1 - x0, y1 - y0);

test.each([Math.PI / 4, Math.PI / 12])(
  'at %f from the warp the pull stays level and no thread gets longer',
  (fromWarp) => {
    const stretch = sheared(fromWarp);
    const before = stripAsCut(strip(fromWarp, stretch));
    const after = stripPulled(strip(fromWarp, stretch));
    const [from, to] = [after.outline[0]!, after.outline[1]!];
    expect(to[1] - from[1]).toBeCloseTo(0, 9);
    expect(to[0] - from[0]).toBeCloseTo(200 * (1 + stretch / 100), 6);
    for (const way of ['warp', 'weft'] as const)
      after[way].forEach((thread, i) => {
        expect(lengthOf(thread)).toBeCloseTo(lengthOf(before[way][i]!), 6);
      });
  },
);

test('along the warp the strip only straightens', () => {
  const after = stripPulled(strip(0, 6));
  expect(after.outline[2]).toEqual([200 * 1.06, 40]);
});

test('threads stay inside the strip as cut', () => {
  const { warp, weft } = stripAsCut(strip(0.6, 20));
  for (const [x0, y0, x1, y1] of [...warp, ...weft])
    for (const [x, y] of [
      [x0, y0],
      [x1, y1],
    ] as const) {
      expect(x).toBeGreaterThan(-1e-6);
      expect(x).toBeLessThan(200 + 1e-6);
      expect(y).toBeGreaterThan(-1e-6);
      expect(y).toBeLessThan(40 + 1e-6);
    }
});
