import type { InkName } from '../../../style/inks.ts';
import { patch } from '../../cloth/patch.ts';
import { arc, place, rectangle, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import type { Circle } from './ginning-layout.ts';
import type { StandArt } from './stand-art.ts';

/** Teeth on the drawn saw: fewer than on a true one, so that each can be seen. */
const TEETH = 34;
/** Depth of a tooth, and how far its tip leans ahead of its root, as shares of the radius and of the pitch. */
const TOOTH_DEEP = 0.105;
const TOOTH_LEAN = 0.3;

/** A toothed rim: each tooth is cut to lean the way the saw turns, clockwise. */
export function sawRim(x: number, y: number, radius: number, teeth: number, deep = TOOTH_DEEP): Point[] {
  const inner = radius * (1 - deep);
  const pitch = (2 * Math.PI) / teeth;
  const at = (angle: number, r: number): Point => [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  return Array.from({ length: teeth }, (_, i) => {
    const root = i * pitch;
    return [at(root, inner), at(root + pitch * (0.62 + TOOTH_LEAN), radius), at(root + pitch * 0.94, inner * 0.995)];
  }).flat();
}

/** The loud piece: an indigo saw on its madder drum. */
function sawMarks(name: string, { x, y, r }: Circle): Mark[] {
  const stitched = (share: number, ink: InkName, on = 9): Mark => ({
    kind: 'stitches',
    stitches: runningStitches(ring(x, y, r * share, 44), `${name}/ring${share}`, { on, off: 7 }),
    ink,
    width: Math.max(1.5, r * 0.016),
  });
  return [
    patch(name, sawRim(x, y, r, TEETH), 'indigo', { shadow: 0, seam: 0, grain: 0.7, scissors: 'asDrawn' }),
    stitched(0.83, 'thread'),
    stitched(0.69, 'faded', 7),
    patch(`${name}/drum`, ring(x, y, r * 0.52, 15, 0.2), 'madder', {
      shadow: 2.6,
      seam: Math.max(4, r * 0.06),
      scissors: { miss: 1.2, snip: 60 },
      grain: 0.5,
    }),
    patch(`${name}/arbor`, ring(x, y, r * 0.23, 9, 0.4), 'weld', {
      shadow: 2.6,
      seam: r > 70 ? r * 0.045 : 0,
      thread: 'walnut',
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

function brushMarks(name: string, { x, y, r }: Circle): Mark[] {
  const bristles = Math.max(26, Math.round(r * 0.9));
  return [
    {
      kind: 'stitches',
      stitches: Array.from({ length: bristles }, (_, i) => {
        const angle = (i / bristles) * 2 * Math.PI;
        const out = r * (i % 2 ? 1 : 0.92);
        return [
          x + r * 0.45 * Math.cos(angle),
          y + r * 0.45 * Math.sin(angle),
          x + out * Math.cos(angle + 0.05),
          y + out * Math.sin(angle + 0.05),
        ] as const;
      }),
      ink: 'walnut',
      width: Math.max(1.6, r * 0.07),
      flat: true,
    },
    patch(`${name}/core`, ring(x, y, r * 0.55, 10, 0.2), 'walnutWarm', {
      shadow: 1.2,
      seam: r > 30 ? 5 : 0,
      scissors: { miss: 0.8, snip: 60 },
      grain: null,
    }),
    patch(`${name}/hub`, ring(x, y, r * 0.17, 6, 0.2), 'weld', {
      shadow: 0,
      seam: 0,
      scissors: 'asDrawn',
      grain: null,
    }),
  ];
}

/** A rib in the saw's own measure: it lies inside the saw where the teeth reach through, and outside where they leave it. */
const ribLine: readonly Point[] = [
  [-0.5, -1.06],
  [-0.7, -0.78],
  [-0.82, -0.48],
  [-0.875, -0.12],
  [-0.86, 0.26],
  [-0.78, 0.62],
  [-0.62, 1.0],
];
/** Where the lint leaves the seed: the teeth go under the rib here. */
export const ginningAngle = Math.PI * 1.23;

function ribMarks(name: string, { x, y, r }: Circle): Mark[] {
  const line = place(ribLine, { x, y, size: r });
  const wide = r * 0.135;
  const rail = (id: string, at: Point, turn: number): Mark =>
    patch(`${name}/${id}`, place(rectangle(-0.17, -0.085, 0.34, 0.17), { x: at[0], y: at[1], size: r, turn }), 'iron', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    });
  return [
    patch(`${name}/bar`, taperedStrip(line, wide, wide * 0.86), 'weld', {
      shadow: 4,
      seam: r > 60 ? wide * 0.3 : 0,
      thread: 'walnut',
      threadWidth: 1.5,
      grain: null,
      scissors: 'asDrawn',
    }),
    rail('head', line[0]!, -0.5),
    rail('foot', line.at(-1)!, 0.6),
  ];
}

/** The box the seed roll turns in, open towards the saw. */
function rollMarks(name: string, { x, y, r }: Circle): Mark[] {
  const shell = taperedStrip(arc(x, y, r * 1.06, Math.PI * 0.55, Math.PI * 1.36, 10), r * 0.13, r * 0.13);
  const spiral = Array.from({ length: 40 }, (_, i): Point => {
    const share = i / 39;
    const angle = -share * Math.PI * 5;
    return [x + r * 0.9 * (1 - share * 0.86) * Math.cos(angle), y + r * 0.9 * (1 - share * 0.86) * Math.sin(angle)];
  });
  return [
    patch(`${name}/roll`, ring(x, y, r, 17, 0.1), 'walnutPale', {
      shadow: 2.6,
      seam: 0,
      grain: 0.4,
      scissors: { miss: 1.4, snip: 60 },
    }),
    {
      kind: 'stitches',
      stitches: runningStitches(spiral, `${name}/spiral`, { on: 9, off: 7, closed: false }),
      ink: 'muslin',
      width: 1.7,
    },
    patch(`${name}/shell`, shell, 'iron', { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 1, snip: 50 } }),
  ];
}

/**
 * A saw stand from its side. The saw turns clockwise: its teeth come up through the roll, take the lint under the ribs and
 * over to the brush, which turns the other way and faster. Seed cannot pass the ribs and falls in front of them.
 */
export const sawStand: StandArt = (input, { wheel, roll, brush }) => {
  const { x, y, r } = wheel;
  const name = 'ginning/sawStand';
  const { turning, labels } = input;
  const perSecond = (perMinute: number) => perMinute / 60 / turning.slowedBy;
  const saw: MovingPart = {
    name: `${name}/saw`,
    marks: sawMarks(`${name}/saw`, wheel),
    middle: [x, y],
    radius: r + 2,
    motion: { kind: 'turn', turnsPerSecond: perSecond(turning.saws) },
    passes: 'belowPieces',
    shows: labels.shows.saws,
  };
  const doffer: MovingPart = {
    name: `${name}/brush`,
    marks: brushMarks(`${name}/brush`, brush),
    middle: [brush.x, brush.y],
    radius: brush.r + 3,
    motion: { kind: 'turn', turnsPerSecond: -perSecond(turning.brush) },
    passes: 'belowPieces',
    shows: labels.shows.brush,
  };
  return {
    under: [group('seedRoll', rollMarks(name, roll))],
    shadowed: sawRim(x, y, r, TEETH),
    parts: [saw, doffer],
    over: [group('ribs', ribMarks(`${name}/rib`, wheel))],
  };
};
