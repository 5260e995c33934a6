import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle, ring } from '../../cloth/point.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { ModuleInput } from './module-input.ts';

/** All modules of the farm, small and counted, in rows along the far side of the yard. */
export function yardMarks(box: Box, kind: ModuleInput['kind'], count: number): Mark[] {
  const wide = kind === 'round' ? 1 : kind === 'conventional' ? 3.4 : 1.7;
  let rows = 1;
  const sizeIn = (n: number) => Math.min(box.height / n, (box.width / Math.ceil(count / n)) * (1 / (wide + 0.35)));
  while (rows < 5 && sizeIn(rows + 1) > sizeIn(rows)) rows++;
  const tall = Math.min(sizeIn(rows), box.height * 0.6);
  const across = Math.ceil(count / rows);
  const pitch = Math.min(tall * (wide + 0.4), box.width / across);
  return Array.from({ length: count }, (_, i): Mark => {
    const row = Math.floor(i / across);
    const x = box.x + pitch * ((i % across) + 0.5) + (row % 2 ? pitch * 0.2 : 0);
    const foot = box.y + box.height - (rows - 1 - row) * tall * 0.92;
    return group(`yard/${i}`, smallModule(`yard/${i}`, kind, x, foot, tall, wide));
  });
}

/** One of them: a wound end in its wrap, a long one under its tarp, or a heaped wagon. */
function smallModule(
  name: string,
  kind: ModuleInput['kind'],
  x: number,
  foot: number,
  tall: number,
  wide: number,
): Mark[] {
  const cloth = { seam: 0, grain: null, scissors: { miss: 0.5 } } as const;
  const cut = (part: string, points: readonly Point[], ink: 'weld' | 'lint' | 'madder', shadow: 0 | 1.2) =>
    patch(`${name}/${part}`, points, ink, { shadow, ...cloth });
  if (kind === 'round') {
    const turn = spread(chanceOf(name), 0.3);
    const y = foot - tall * 0.46;
    return [
      cut('wrap', ring(x, y, tall * 0.44, 9, turn), 'weld', 1.2),
      cut('end', ring(x, y, tall * 0.3, 9, turn), 'lint', 0),
    ];
  }
  const width = tall * wide;
  const [left, top] = [x - width / 2, foot - tall * 0.8];
  return kind === 'conventional'
    ? [
        cut('body', rectangle(left, top, width, tall * 0.8), 'lint', 1.2),
        cut('tarp', rectangle(left, top, width, tall * 0.4), 'weld', 0),
      ]
    : [
        cut('heap', rectangle(left + width * 0.06, top - tall * 0.12, width * 0.88, tall * 0.3), 'lint', 0),
        cut('bed', rectangle(left, top, width, tall * 0.8), 'madder', 1.2),
      ];
}
