import { expect, test } from 'vitest';
import { groupsOf } from '../../../src/scene/display-list.ts';
import { closeThreads, type DrawnThreads } from '../../../src/scene/lessons/close-cloth.ts';

const cloth: DrawnThreads = {
  weave: 'plain',
  endsPerInch: 60,
  picksPerInch: 40,
  warpInches: 0.006,
  weftInches: 0.008,
  warpInk: 'lint',
  weftInk: 'weldPale',
};
const box = { x: 0, y: 0, width: 480, height: 240 };

test('as many threads are drawn as lie in so much cloth at that magnification', () => {
  const groups = new Map([...groupsOf(closeThreads(cloth, box, 10))].map((group) => [group.name, group.count]));
  // 480 px are half an inch at ten times 96 px to the inch, 240 px a quarter.
  expect(groups.get('ends')).toBe(30);
  expect(groups.get('picks')).toBe(10);
});

test('half of the crossings of plain cloth, and a fifth of those of a five-thread satin, show the weft', () => {
  const shown = (weave: DrawnThreads['weave']) => {
    const last = closeThreads({ ...cloth, weave }, box, 10).at(-1)!;
    return last.kind === 'stitches' ? last.stitches.length : 0;
  };
  expect(shown('plain')).toBe((30 * 10) / 2);
  expect(shown('sateen')).toBe((30 * 10) / 5);
});
