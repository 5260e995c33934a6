import { expect, test } from 'vitest';
import { interlacing, weaveIds, weaveOf } from '../../../src/model/cloth/weaves.ts';

test('plain interlaces most, sateen least', () => {
  const tightness = weaveIds.map(interlacing);
  expect(interlacing('plain')).toBe(1);
  expect(Math.max(...tightness)).toBe(1);
  expect(Math.min(...tightness)).toBe(interlacing('sateen'));
});
test('no weave changes side more often than it has threads', () => {
  for (const id of weaveIds) expect(weaveOf(id).intersections).toBeLessThanOrEqual(weaveOf(id).repeat);
});
