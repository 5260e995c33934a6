import { Window } from 'happy-dom';
import { expect, test } from 'vitest';
import { type DisplayList, group, type Mark } from '../../src/scene/display-list.ts';
import { paintSvg } from '../../src/scene/paint-svg.ts';
import { patchSvg } from '../../src/scene/patch-svg.ts';

const window = new Window();
const size = { width: 100, height: 100, theme: 'day' } as const;

/** A piece with its shadow, and a seam where it is sewn on: two to four elements. */
const piece = (x: number, sewn = false): Mark => ({
  kind: 'patch',
  points: [
    [x, 0],
    [x + 9, 0],
    [x, 9],
  ],
  ink: 'weld',
  shadow: 1.2,
  ...(sewn ? { stitch: { stitches: [[x, 1, x + 4, 1]] as const, ink: 'madder' as const, width: 1 } } : {}),
});
const words = (text: string): Mark => ({ kind: 'text', text, x: 1, y: 2, size: 12, ink: 'walnut', anchor: 'start' });
const noStitch: Mark = { kind: 'stitches', stitches: [], ink: 'madder', width: 1 };

const lists: readonly DisplayList[] = [
  [piece(1), group('pieces', [piece(2), piece(3)], 2), words('one bale')],
  [piece(1), group('pieces', [piece(2), piece(4, true)], 2), words('one bale')],
  [piece(1), group('pieces', [piece(2), piece(4), piece(5)], 3), words('two bales'), piece(8)],
  [noStitch, piece(1, true), words('none < left')],
  [],
  [group('pieces', [], 0), group('still', [noStitch, words('a')]), piece(1)],
  [group('pieces', [], 0), group('still', [piece(6), words('a')]), words('b')],
];

function drawingOf(list: DisplayList) {
  const host = window.document.createElement('div');
  host.innerHTML = paintSvg(list, size);
  return host.firstElementChild as unknown as Element;
}

test('a drawing turned into any other is what that other is drawn as', () => {
  for (const before of lists) {
    for (const after of lists) {
      const drawing = drawingOf(before);
      patchSvg(drawing, before, after, size.theme);
      expect(drawing.outerHTML).toBe(drawingOf(after).outerHTML);
    }
  }
});

test('what is drawn the same keeps its elements', () => {
  const [before, after] = [lists[0]!, lists[1]!];
  const drawing = drawingOf(before);
  const elements = [...drawing.querySelectorAll('*')];
  patchSvg(drawing, before, after, size.theme);
  const kept = [...drawing.querySelectorAll('*')].filter((element) => elements.includes(element));
  // All but the shadow and the cloth of the second piece of the group.
  expect(elements).toHaveLength(8);
  expect(kept).toHaveLength(6);
});
