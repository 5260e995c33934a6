import { expect, test } from 'vitest';
import { describeCloth } from '../../../src/model/cloth/describe-cloth.ts';
import { tightnessOf } from '../../../src/model/cloth/tightness.ts';

const woven = (warpTex: number, weftTex: number, endsPerInch: number, picksPerInch: number) =>
  tightnessOf(
    describeCloth({
      warp: { singleTex: warpTex, singles: 1 },
      weft: { singleTex: weftTex, singles: 1 },
      endsPerInch,
      picksPerInch,
      weave: 'plain',
      warpCrimpPercent: null,
      weftCrimpPercent: null,
    }).construction,
  );

test('30/20 tex at 40 x 30 per cm is a cloth, if a tight one — GATE 2009 Q37 (Indian Institutes of Technology)', () => {
  expect(woven(30, 20, 40 * 2.54, 30 * 2.54)).toBe('tight');
});
test('a print cloth fits, a broadcloth of 40s at 133 x 72 fits, thick yarn at 200 does not', () => {
  expect(woven(19.7, 19.7, 78, 76)).toBe('fits');
  expect(woven(14.8, 14.8, 133, 72)).toBe('fits');
  expect(woven(148, 148, 200, 200)).toBe('jammed');
  expect(woven(19.7, 19.7, 140, 140)).toBe('jammed');
});
