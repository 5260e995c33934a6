import { expect, test } from 'vitest';
import { groupsOf } from '../../../src/scene/display-list.ts';
import { strengthStrips } from '../../../src/scene/lessons/strength-strips.ts';

test('strips are as long as their numbers, on one scale', () => {
  const rows = [
    { name: 'a', bundle: 30, thread: 15, bundleText: '30', threadText: '15' },
    { name: 'b', bundle: 40, thread: 24, bundleText: '40', threadText: '24' },
  ];
  const lengths = [...groupsOf(strengthStrips(rows, 500))].flatMap(({ marks }) =>
    marks.flatMap((mark) => {
      if (mark.kind !== 'patch') return [];
      const xs = mark.points.map(([x]) => x);
      return [Math.max(...xs) - Math.min(...xs)];
    }),
  );
  const px = lengths[2]! / 40;
  [30, 15, 40, 24].forEach((wanted, i) => {
    expect(Math.abs(lengths[i]! / px - wanted)).toBeLessThan(0.4);
  });
});
