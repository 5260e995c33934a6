import { expect, test } from 'vitest';
import { groupsOf, type PatchMark } from '../../../src/scene/display-list.ts';
import { fiberSections } from '../../../src/scene/lessons/fiber-sections.ts';

const spanOf = ({ points }: PatchMark): number => {
  const xs = points.map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs);
};

test('both fibers are drawn on one scale: circles and hollows as wide as their radii say', () => {
  const sections = [
    { radius: 1, hollow: 0.5, name: 'a', lines: [] },
    { radius: 0.8, hollow: 0.2, name: 'b', lines: [] },
  ];
  const groups = [...groupsOf(fiberSections(sections, 480))];
  const spans = groups.map(({ marks }) => marks.filter((mark) => mark.kind === 'patch').map(spanOf));
  const unit = spans[0]![0]!;
  const drawn = [1, spans[0]![1]! / unit, spans[1]![0]! / unit, spans[1]![1]! / unit];
  [1, 0.5, 0.8, 0.2].forEach((wanted, i) => {
    // Scissors miss by a few per cent.
    expect(Math.abs(drawn[i]! - wanted)).toBeLessThan(0.06);
  });
});

test('a fiber without a hollow has none drawn', () => {
  const [only] = [...groupsOf(fiberSections([{ radius: 1, hollow: 0, name: 'a', lines: ['x'] }], 300))];
  expect(only!.marks.filter(({ kind }) => kind === 'patch')).toHaveLength(1);
});
