import { expect, test } from 'vitest';
import { rectangle } from '../../../src/scene/cloth/point.ts';
import { type DisplayList, flatMarks, group, groupsOf, type Mark } from '../../../src/scene/display-list.ts';
import { shortParts } from '../../../src/scene/trace/short-parts.ts';

const piece = (at: number): Mark => ({ kind: 'patch', points: rectangle(at, 0, 1, 1), ink: 'muslin', shadow: 0 });
const pieces = (count: number): DisplayList => Array.from({ length: count }, (_, at) => piece(at));

test('a long group is cut, every mark stays and in its order, and a count is told once', () => {
  const list = [group('row', [piece(-1), group('bolls', pieces(500), 500)]), group('field', pieces(3))];
  const parts = shortParts(list);
  expect(parts.length).toBeGreaterThan(4);
  for (const part of parts) expect([...flatMarks([part])].length).toBeLessThanOrEqual(120);
  expect([...flatMarks(parts)]).toEqual([...flatMarks(list)]);
  expect([...groupsOf(parts)].flatMap(({ count }) => count ?? [])).toEqual([500]);
});

test('a short list is left as it is', () => {
  const list = [group('field', pieces(3)), piece(9)];
  expect(shortParts(list)).toEqual(list);
});
