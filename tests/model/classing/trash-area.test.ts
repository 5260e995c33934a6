import { expect, test } from 'vitest';
import { darkenedRd, lintRd, trashAreaPercent } from '../../../src/model/classing/trash-area.ts';
import { fibreOf, lintLot, trashLb } from './lots.ts';

test('no lint, no trash area', () => {
  expect(trashAreaPercent(lintLot(fibreOf(), 0))).toBe(0);
});
test('lint cleaners brighten the reading by about 0.5 and 0.25 Rd beyond the first, less each time (Mangialardi 1989: the gain shrinks)', () => {
  const rd = (['picked1', 'picked2', 'picked3'] as const).map((gin) =>
    darkenedRd(77, trashAreaPercent(lintLot(fibreOf(), 1, trashLb[gin]))),
  );
  expect(rd[1]! - rd[0]!).toBeCloseTo(0.52, 1);
  expect(rd[2]! - rd[1]!).toBeCloseTo(0.24, 1);
});
test('the lint between the trash is as bright as before', () => {
  expect(lintRd(darkenedRd(77, 0.4), 0.4)).toBeCloseTo(77, 12);
});
