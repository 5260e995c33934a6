import { patch } from '../../cloth/patch.ts';
import { place, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import type { Circle } from './ginning-layout.ts';
import type { StandArt } from './stand-art.ts';

const BLADES = 6;

/** The roller: packing of many plies on a core; the plies are cut across and show as spokes. */
function rollerMarks(name: string, { x, y, r }: Circle): Mark[] {
  const plies = 40;
  const spokes: Stitch[] = Array.from({ length: plies }, (_, i) => {
    const angle = (i / plies) * 2 * Math.PI;
    return [
      x + r * 0.64 * Math.cos(angle),
      y + r * 0.64 * Math.sin(angle),
      x + r * 0.93 * Math.cos(angle),
      y + r * 0.93 * Math.sin(angle),
    ];
  });
  return [
    patch(name, ring(x, y, r, 40), 'walnutWarm', { shadow: 0, seam: 0, grain: 0.7, scissors: 'asDrawn' }),
    { kind: 'stitches', stitches: spokes, ink: 'walnutPale', width: Math.max(1.4, r * 0.016) },
    patch(`${name}/core`, ring(x, y, r * 0.58, 16, 0.2), 'madder', {
      shadow: 2.6,
      seam: Math.max(4, r * 0.06),
      scissors: { miss: 1.2, snip: 60 },
      grain: 0.5,
    }),
    {
      kind: 'stitches',
      stitches: runningStitches(ring(x, y, r * 0.38, 30), `${name}/ring`, { on: 8, off: 6 }),
      ink: 'thread',
      width: 1.8,
    },
    patch(`${name}/arbor`, ring(x, y, r * 0.22, 9, 0.4), 'weld', {
      shadow: 2.6,
      seam: 0,
      scissors: { miss: 0.8, snip: 60 },
      grain: null,
    }),
    patch(`${name}/shaft`, ring(x, y, r * 0.085, 6, 0.1), 'iron', {
      shadow: 0,
      seam: 0,
      scissors: 'asDrawn',
      grain: null,
    }),
  ];
}

/** Where the rotary knife turns, in front of the fixed one. */
const rotaryKnifeOf = ({ x, y, r }: Circle): Circle => ({ x: x - r * 1.2, y: y - r * 0.34, r: r * 0.27 });

function rotaryMarks(name: string, { x, y, r }: Circle): Mark[] {
  const blade: readonly Point[] = [
    [-0.3, -0.3],
    [-0.1, -1.1],
    [0.16, -1.16],
    [0.3, -0.3],
  ];
  return [
    ...Array.from({ length: BLADES }, (_, i) =>
      patch(`${name}/blade${i}`, place(blade, { x, y, size: r * 0.86, turn: (i / BLADES) * 2 * Math.PI }), 'indigo', {
        shadow: 0,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
    ),
    patch(`${name}/hub`, ring(x, y, r * 0.5, 10, 0.3), 'mid', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.6 },
    }),
    patch(`${name}/shaft`, ring(x, y, r * 0.2, 6), 'weld', { shadow: 0, seam: 0, grain: null, scissors: 'asDrawn' }),
  ];
}

/** The fixed knife: a heavy bar whose edge presses on the roller where the lint goes under it. */
function fixedKnife(name: string, { x, y, r }: Circle): Mark[] {
  const at = (angle: number, out: number): Point => [x + r * out * Math.cos(angle), y + r * out * Math.sin(angle)];
  const bar = [at(Math.PI * 1.14, 1.0), at(Math.PI * 1.3, 1.1), at(Math.PI * 1.38, 1.46), at(Math.PI * 1.27, 1.54)];
  const edge = [at(Math.PI * 1.14, 1.0), at(Math.PI * 1.22, 1.06), at(Math.PI * 1.29, 1.46)];
  return [
    patch(`${name}/bar`, bar, 'iron', { shadow: 4, seam: 0, grain: null, scissors: { miss: 1 } }),
    patch(`${name}/edge`, taperedStrip(edge, r * 0.02, r * 0.1), 'weld', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  ];
}

/** The apron down which the seed cotton slides to the roller. */
function apron(name: string, wheel: Circle, roll: Circle): Mark {
  const path: Point[] = [
    [roll.x - roll.r * 0.95, roll.y - roll.r * 0.9],
    [roll.x - roll.r * 0.7, roll.y - roll.r * 0.3],
    [wheel.x - wheel.r * 1.5, wheel.y - wheel.r * 0.02],
  ];
  return patch(`${name}/apron`, taperedStrip(path, roll.r * 0.14, roll.r * 0.12), 'iron', {
    shadow: 2.6,
    seam: 0,
    grain: null,
    scissors: { miss: 1 },
  });
}

/**
 * A roller stand from its side. The roller turns clockwise and draws the fibre under the fixed knife; the seed cannot follow,
 * and the rotary knife knocks it down.
 */
export const rollerStand: StandArt = (input, { wheel, roll, brush }) => {
  const name = 'ginning/rollerStand';
  const { turning, labels } = input;
  const perSecond = (perMinute: number) => perMinute / 60 / turning.slowedBy;
  const knife = rotaryKnifeOf(wheel);
  const roller: MovingPart = {
    name: `${name}/roller`,
    marks: rollerMarks(`${name}/roller`, wheel),
    middle: [wheel.x, wheel.y],
    radius: wheel.r + 2,
    motion: { kind: 'turn', turnsPerSecond: perSecond(turning.roller) },
    passes: 'belowPieces',
    shows: labels.shows.roller,
  };
  const rotary: MovingPart = {
    name: `${name}/rotary`,
    marks: rotaryMarks(`${name}/rotary`, knife),
    middle: [knife.x, knife.y],
    radius: knife.r * 1.1 + 2,
    motion: { kind: 'turn', turnsPerSecond: -perSecond(turning.rotaryKnife) },
    passes: 'abovePieces',
    shows: labels.shows.rotaryKnife,
  };
  return {
    under: [
      apron(name, wheel, roll),
      // No brush: a stream of air takes the lint off the roller and into this mouth.
      patch(
        `${name}/mouth`,
        [
          [brush.x - brush.r * 0.9, brush.y - brush.r * 0.5],
          [brush.x + brush.r, brush.y + brush.r * 0.2],
          [brush.x + brush.r, brush.y + brush.r * 1.5],
          [brush.x - brush.r * 0.6, brush.y + brush.r * 1.7],
        ],
        'mid',
        { shadow: 2.6, seam: brush.r > 24 ? 5 : 0, scissors: { miss: 1 } },
      ),
    ],
    shadowed: ring(wheel.x, wheel.y, wheel.r, 40),
    parts: [roller, rotary],
    over: [group('fixedKnife', fixedKnife(`${name}/fixed`, wheel))],
  };
};
