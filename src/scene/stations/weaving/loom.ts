import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle, ring } from '../../cloth/point.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { slowed } from '../slowed.ts';
import type { WeavingScene } from './weaving-input.ts';

const cut = { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 0.9, snip: 60 } } as const;

/** Where the parts of a loom lie, seen from its side: warp from the left, cloth to the right. */
export function loomPlaces({ x, y, width, height }: Box) {
  const level = y + height * 0.45;
  return {
    level,
    warpBeam: [x + width * 0.1, y + height * 0.72] as Point,
    backRest: [x + width * 0.13, level] as Point,
    shaftsX: x + width * 0.36,
    reedX: x + width * 0.6,
    fellX: x + width * 0.71,
    breastBeam: [x + width * 0.87, level] as Point,
    clothBeam: [x + width * 0.88, y + height * 0.76] as Point,
    beamPx: Math.min(height * 0.2, width * 0.1),
    lift: height * 0.185,
    shaftPitch: Math.min(width * 0.06, height * 0.13),
  };
}

/** The loom's frame and what stands still in it: beams without yarn, rests, threads through the open shed. */
export function loomStill({ shafts }: WeavingScene, box: Box): Mark[] {
  const at = loomPlaces(box);
  const { level, lift } = at;
  const foot = box.y + box.height - 4;
  const post = (name: string, x: number, top: number): Mark =>
    patch(`weaving/${name}`, rectangle(x - 5, top, 10, foot - top), 'walnut', cut);
  const shed: Stitch[] = [];
  for (let i = 0; i < shafts; i++) {
    const eyeX = at.shaftsX + (i - (shafts - 1) / 2) * at.shaftPitch;
    const up = i % 2 === 0 ? -1 : 1;
    shed.push([...at.backRest, eyeX, level + up * lift * 0.62], [eyeX, level + up * lift * 0.62, at.fellX, level]);
  }
  return [
    post('post0', at.warpBeam[0], level),
    post('post1', at.breastBeam[0], level),
    patch(
      'weaving/sill',
      rectangle(at.warpBeam[0] - 12, foot - 8, at.breastBeam[0] - at.warpBeam[0] + 24, 9),
      'walnutWarm',
      cut,
    ),
    ...[-1, 1].map((side) =>
      patch(
        `weaving/pillar${side}`,
        rectangle(at.shaftsX + side * at.shaftPitch * 3 - 3, box.y + 6, 6, foot - box.y - 8),
        'walnutWarm',
        cut,
      ),
    ),
    patch(
      'weaving/arch',
      rectangle(at.shaftsX - at.shaftPitch * 3.2, box.y + 2, at.shaftPitch * 6.4, 8),
      'walnutWarm',
      cut,
    ),
    { kind: 'stitches', stitches: shed, ink: 'weld', width: 2, flat: true },
    {
      kind: 'stitches',
      stitches: [[at.fellX, level, ...at.breastBeam] as const],
      ink: 'mid',
      width: 5.5,
      flat: true,
    },
    patch('weaving/backRest', ring(at.backRest[0], at.backRest[1] + 3, 7, 9), 'iron', cut),
    patch('weaving/breastBeam', ring(at.breastBeam[0], at.breastBeam[1] + 4, 8, 9), 'iron', cut),
    shuttle([at.reedX + (at.fellX - at.reedX) * 0.34, level], lift * 0.3),
  ];
}

/** What carries the pick, end on in the open shed. */
const shuttle = ([x, y]: Point, size: number): Mark =>
  patch(
    'weaving/shuttle',
    [
      [x - size, y],
      [x - size * 0.3, y - size * 0.55],
      [x + size * 0.7, y - size * 0.3],
      [x + size * 0.7, y + size * 0.3],
      [x - size * 0.3, y + size * 0.55],
    ],
    'walnutPale',
    { ...cut, shadow: 1.2 },
  );

/** The beams with what is wound on them: warp runs off one as cloth comes on the other. @param made 0 to 1 */
export function beams(box: Box, made: number, cloth: boolean): Mark[] {
  const at = loomPlaces(box);
  const core = at.beamPx * 0.36;
  const grown = (share: number) => Math.sqrt(core ** 2 + (at.beamPx ** 2 - core ** 2) * share);
  const warp = grown(1 - made * 0.92);
  const rolled = grown(cloth ? Math.max(0.02, made) : 0.02);
  const wound = (name: string, [x, y]: Point, radius: number, ink: 'weldPale' | 'lint'): Mark[] => [
    patch(`${name}/edge`, ring(x, y, radius + 1.6, 19), 'mid', cut),
    patch(`${name}/wound`, ring(x, y, radius, 19), ink, { ...cut, shadow: 0 }),
    patch(`${name}/core`, ring(x, y, core, 9), 'madder', { ...cut, shadow: 1.2 }),
  ];
  const sheet = (from: Point, to: Point, ink: 'weld' | 'mid', width: number): Mark => ({
    kind: 'stitches',
    stitches: [[...from, ...to]],
    ink,
    width,
    flat: true,
  });
  return [
    sheet(
      [at.warpBeam[0] - warp * 0.92, at.warpBeam[1] - warp * 0.3],
      [at.backRest[0] - 4, at.backRest[1]],
      'weld',
      2.6,
    ),
    ...wound('weaving/warpBeam', at.warpBeam, warp, 'weldPale'),
    ...(cloth
      ? [
          sheet(
            [at.breastBeam[0] + 6, at.breastBeam[1] + 2],
            [at.clothBeam[0] + rolled * 0.94, at.clothBeam[1] - rolled * 0.2],
            'mid',
            4.5,
          ),
        ]
      : []),
    ...wound('weaving/clothBeam', at.clothBeam, rolled, 'lint'),
  ];
}

/** Shafts that lift by turns, and the reed that beats every pick in. */
export function loomParts(scene: WeavingScene, box: Box): MovingPart[] {
  const at = loomPlaces(box);
  const { perSecond, times } = slowed(scene.perMinute);
  const tall = at.lift * 2.1;
  const shafts = Array.from({ length: scene.shafts }, (_, i): MovingPart => {
    const x = at.shaftsX + (i - (scene.shafts - 1) / 2) * at.shaftPitch;
    const up = i % 2 === 0 ? -1 : 1;
    const y = at.level + up * at.lift * 0.62;
    const wide = Math.min(9, at.shaftPitch * 0.44);
    return {
      name: `shaft${i % 2}`,
      marks: [
        { kind: 'stitches', stitches: [[x, y - tall / 2, x, y + tall / 2]], ink: 'iron', width: 1.8, flat: true },
        ...[-1, 1].map((end) =>
          patch(
            `weaving/shaft${i}/${end}`,
            rectangle(x - wide, y + (end * tall) / 2 - 4, wide * 2, 8),
            i % 2 ? 'indigo' : 'madder',
            {
              ...cut,
              shadow: 1.2,
            },
          ),
        ),
        patch(`weaving/eye${i}`, ring(x, y, 3.2, 6), 'weld', { ...cut, shadow: 0 }),
      ],
      middle: [x, y],
      radius: Math.hypot(tall / 2 + 5, wide) + 2,
      motion: {
        kind: 'stroke',
        by: [0, -up * at.lift * 1.24],
        strokesPerSecond: perSecond / Math.max(2, scene.shafts),
      },
      passes: 'abovePieces',
      shows: scene.labels.shows('shafts', scene.perMinute, times),
    };
  });
  const reedTall = at.lift * 2.2;
  const reedTop = at.level - reedTall / 2;
  const dents: Stitch[] = [-2, 0, 2].map((shift) => [
    at.reedX + shift,
    reedTop + 5,
    at.reedX + shift,
    reedTop + reedTall - 5,
  ]);
  return [
    ...shafts,
    {
      name: 'reed',
      marks: [
        { kind: 'stitches', stitches: dents, ink: 'iron', width: 1.1, flat: true },
        ...[reedTop, reedTop + reedTall - 7].map((y, i) =>
          patch(`weaving/reed${i}`, rectangle(at.reedX - 6, y, 12, 7), 'iron', { ...cut, shadow: 1.2 }),
        ),
      ],
      middle: [at.reedX, at.level],
      radius: reedTall / 2 + 9,
      motion: { kind: 'stroke', by: [at.fellX - at.reedX - 2, 0], strokesPerSecond: perSecond },
      passes: 'abovePieces',
      shows: scene.labels.shows('reed', scene.perMinute, times),
    },
  ];
}
