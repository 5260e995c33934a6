import { patch } from '../../cloth/patch.ts';
import { ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import type { CleaningInput, Wheel } from './cleaning-input.ts';
import type { Way } from './cleaning-layout.ts';

interface Circle {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}
/** Below this radius no ring is sewn into a wheel. */
const ROOM_TO_SEW_PX = 17;

const hub = (name: string, { x, y, r }: Circle, share: number): Mark =>
  patch(`${name}/hub`, ring(x, y, Math.max(2, r * share), 7, 0.2), 'weld', {
    shadow: 0,
    seam: 0,
    grain: null,
    scissors: 'asDrawn',
  });

const sewnRing = (name: string, { x, y, r }: Circle, share: number): Mark[] =>
  r < ROOM_TO_SEW_PX
    ? []
    : [
        {
          kind: 'stitches',
          stitches: runningStitches(ring(x, y, r * share, 26), `${name}/ring`, { on: 5, off: 4 }),
          ink: 'thread',
          width: 1.4,
        },
      ];

/** A drum set with blunt spikes. */
function spiked(name: string, circle: Circle): Mark[] {
  const { x, y, r } = circle;
  const spikes = r > 14 ? 12 : 9;
  return [
    {
      kind: 'stitches',
      stitches: Array.from({ length: spikes }, (_, i) => {
        const angle = (i / spikes) * 2 * Math.PI;
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        return [x + r * 0.5 * cos, y + r * 0.5 * sin, x + r * 0.95 * cos, y + r * 0.95 * sin] as const;
      }),
      ink: 'ink',
      width: Math.max(1.6, r * 0.15),
      flat: true,
    },
    patch(`${name}/drum`, ring(x, y, r * 0.68, 12, 0.2), 'indigo', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    ...sewnRing(name, circle, 0.5),
    hub(name, circle, 0.24),
  ];
}

/** A saw cylinder from its end; its teeth lean the way it turns. */
function saw(name: string, circle: Circle, turns: Way): Mark[] {
  const { x, y, r } = circle;
  const teeth = Math.max(14, Math.min(30, Math.round(r * 0.62)));
  const inner = r * (r > 30 ? 0.88 : 0.82);
  const pitch = (2 * Math.PI) / teeth;
  const at = (angle: number, out: number): Point => [x + out * Math.cos(angle), y + out * Math.sin(angle)];
  const rim = Array.from({ length: teeth }, (_, i) => {
    const root = i * pitch;
    return [at(turns * root, inner), at(turns * (root + pitch * 0.92), r), at(turns * (root + pitch * 0.96), inner)];
  }).flat();
  return [
    patch(name, rim, 'indigo', { shadow: 0, seam: 0, grain: r > 30 ? 0.7 : null, scissors: 'asDrawn' }),
    ...sewnRing(name, circle, 0.72),
    patch(`${name}/drum`, ring(x, y, r * 0.5, 12, 0.2), 'madder', {
      shadow: 1.2,
      seam: r > 34 ? 4 : 0,
      grain: null,
      scissors: { miss: Math.min(0.8, r * 0.03), snip: 60 },
    }),
    hub(name, circle, 0.2),
  ];
}

/** A doffing brush. */
function brush(name: string, circle: Circle): Mark[] {
  const { x, y, r } = circle;
  const bristles = Math.max(16, Math.round(r * 1.5));
  return [
    {
      kind: 'stitches',
      stitches: Array.from({ length: bristles }, (_, i) => {
        const angle = (i / bristles) * 2 * Math.PI;
        const out = r * (i % 2 ? 0.97 : 0.88);
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        return [x + r * 0.45 * cos, y + r * 0.45 * sin, x + out * cos, y + out * sin] as const;
      }),
      ink: 'walnut',
      width: Math.max(1.4, r * 0.09),
      flat: true,
    },
    patch(`${name}/core`, ring(x, y, r * 0.55, 9, 0.2), 'walnutWarm', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
    hub(name, circle, 0.18),
  ];
}

/**
 * A turning wheel of the cleaning line. Wheels of one kind, size and way share their marks.
 * @param turns 1 with the clock, -1 against it
 */
export function wheel(input: CleaningInput, kind: Wheel, circle: Circle, turns: Way): MovingPart {
  const name = `cleaning/${kind}/${turns}/${circle.r.toFixed(1)}`;
  const marks =
    kind === 'extractorSaw' ? saw(name, circle, turns) : kind === 'brush' ? brush(name, circle) : spiked(name, circle);
  return {
    name,
    marks,
    middle: [circle.x, circle.y],
    radius: circle.r + 2.5,
    motion: { kind: 'turn', turnsPerSecond: (turns * input.turning[kind]) / 60 / input.turning.slowedBy },
    passes: 'belowPieces',
    shows: input.labels.shows[kind],
  };
}
