import { partStitches, partThreadWidth } from '../../cloth/part-stitch.ts';
import { patch } from '../../cloth/patch.ts';
import { ring } from '../../cloth/point.ts';
import type { Mark } from '../../display-list.ts';
import type { WeavingScene } from './weaving-input.ts';
import type { WeavingLayout } from './weaving-layout.ts';

/** The finishing bath that the cloth runs through between two rollers; none for cloth that stays as it comes. */
export function bathMarks({ labels }: WeavingScene, { bath, band }: WeavingLayout): Mark[] {
  if (labels.bath === '') return [];
  const { x, width } = bath;
  const tall = band.px * 1.5;
  const top = band.y - tall / 2;
  const [left, right] = [x + width * 0.02, x + width * 0.45];
  const wave = (y: number, name: string): Mark => ({
    kind: 'stitches',
    stitches: partStitches(
      'water',
      [
        [left + 5, y],
        [right - 5, y],
      ],
      name,
    ),
    ink: 'thread',
    width: partThreadWidth('water'),
  });
  const cut = { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 1 } } as const;
  return [
    patch(
      'weaving/bath',
      [
        [left, top],
        [right, top],
        [right - 5, top + tall],
        [left + 5, top + tall],
      ],
      'mid',
      { ...cut, shadow: 4 },
    ),
    wave(top + tall * 0.24, 'weaving/wave0'),
    wave(top + tall * 0.52, 'weaving/wave1'),
    wave(top + tall * 0.8, 'weaving/wave2'),
    ...[left, right].map((at, i) => patch(`weaving/bathRoller${i}`, ring(at, top - 2, 6.5, 9), 'iron', cut)),
  ];
}
