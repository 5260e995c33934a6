import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { ring } from '../../cloth/point.ts';
import { group, type Mark, type Stitch } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { disc, sawDisc } from '../machines/machine-parts.ts';
import { fibresPerLine } from './drafting.ts';
import { turning } from './prepare.ts';
import type { SpinningScene } from './spinning-input.ts';
import type { SpinningLayout } from './spinning-layout.ts';

/** Middle and radius of the rotor, and of the opening roller before it, px. */
export function rotorPlaces({ nipX, yarnX, backX, axisY, fanPx }: SpinningLayout) {
  const radius = Math.min(fanPx * 0.5, (nipX - yarnX) * 0.62);
  const roller = Math.min(fanPx * 0.24, (backX - nipX) * 0.6);
  return { x: yarnX + radius, y: axisY, radius, rollerX: nipX + roller * 1.3, rollerY: axisY + fanPx * 0.1, roller };
}

/** The opening roller combs the sliver to single fibres; they fly into the rotor and lie in its groove, every one drawn. */
export function rotorUnit(scene: SpinningScene, layout: SpinningLayout): { still: Mark[]; parts: MovingPart[] } {
  const { x, y, radius, rollerX, rollerY, roller } = rotorPlaces(layout);
  const per = fibresPerLine(scene.fibres);
  const count = Math.max(1, Math.round(scene.fibres / per));
  const chance = chanceOf('spinning/groove');
  const holds = scene.yarn !== null;
  const groove: Stitch[] = Array.from({ length: count }, (_, i) => {
    const angle = (i / count) * 2 * Math.PI;
    const reach = radius * (holds ? 0.77 : 0.5 + 0.3 * chance());
    const lean = angle + 0.95 + (holds ? 0 : spread(chance, 1.1));
    const half = radius * 0.13;
    const [cx, cy] = [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
    return [
      cx - half * Math.cos(lean),
      cy - half * Math.sin(lean),
      cx + half * Math.cos(lean),
      cy + half * Math.sin(lean),
    ];
  });
  const flying: Stitch[] = Array.from({ length: 16 }, (_, i) => {
    const t = (i + 0.5) / 16;
    const [fx, fy] = [
      rollerX - roller + (x + radius * 0.6 - rollerX + roller) * t,
      rollerY - roller * 0.7 + (y - radius * 0.6 - rollerY + roller * 0.7) * t,
    ];
    return [fx, fy + spread(chance, 4), fx - 13, fy - 5 + spread(chance, 5)];
  });
  const marks: Mark[] = [
    ...disc('spinning/rotorCup', x, y, radius, 'indigoWarm', 0),
    patch('spinning/rotorWall', ring(x, y, radius * 0.93, 30), 'ink', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    group(
      'fibres',
      [
        {
          kind: 'stitches',
          stitches: groove,
          ink: 'lint',
          width: Math.max(0.8, Math.min(1.7, (radius * 2.7) / count)),
          flat: true,
        },
      ],
      count,
    ),
    patch('spinning/navel', ring(x, y, radius * 0.26, 12), 'madder', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    patch('spinning/navelHole', ring(x, y, radius * 0.1, 10), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  ];
  return {
    still: [
      patch('spinning/rotorHousing', ring(x, y, radius * 1.1, 22, 0.1), 'madder', {
        shadow: 4,
        seam: 0,
        grain: null,
        scissors: { miss: 1 },
      }),
      { kind: 'stitches', stitches: flying, ink: 'lint', width: 1.1, flat: true },
    ],
    parts: [
      { ...turning(scene, 'rotor', 'rotor', [x, y], radius, marks), passes: 'belowPieces' },
      turning(
        scene,
        'openingRoller',
        'openingRoller',
        [rollerX, rollerY],
        roller,
        [
          sawDisc('spinning/openingRoller', rollerX, rollerY, roller, 26, 'mid', 0),
          ...disc('spinning/openingHub', rollerX, rollerY, roller * 0.45, 'weld', 0),
          {
            kind: 'stitches',
            stitches: [[rollerX, rollerY, rollerX + roller * 0.4, rollerY]],
            ink: 'ink',
            width: 2,
            flat: true,
          },
        ],
        -1,
      ),
    ],
  };
}
