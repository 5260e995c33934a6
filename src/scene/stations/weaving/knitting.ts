import { patch } from '../../cloth/patch.ts';
import { type Box, place, ring } from '../../cloth/point.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { slowed } from '../slowed.ts';
import type { WeavingScene } from './weaving-input.ts';

const cut = { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 0.9, snip: 40 } } as const;
/** Needles drawn round the cylinder; a machine has many more. */
const NEEDLES = 40;
const FEEDERS = 4;

/** The middle of the needle cylinder, seen from above, and its size. */
export function cylinderPlaces({ x, y, width, height }: Box) {
  const radius = Math.min(height * 0.36, width * 0.2);
  const middle: Point = [x + width * 0.6, y + height * 0.53];
  const cones = Array.from(
    { length: FEEDERS },
    (_, i): Point => [x + width * 0.12 + (i % 2) * width * 0.11, y + height * (0.2 + 0.22 * i)],
  );
  return { radius, middle, cones };
}

/** Cones, the yarn from each to its feeder, and the bed the cylinder turns in. */
export function knittingStill(box: Box): Mark[] {
  const { radius, middle, cones } = cylinderPlaces(box);
  const yarn = cones.map((from, i): Stitch => {
    // The topmost cone feeds the topmost place, so that no two yarns cross.
    const angle = Math.PI * (1.28 - (i / (FEEDERS - 1)) * 0.56);
    return [...from, middle[0] + Math.cos(angle) * radius * 1.06, middle[1] + Math.sin(angle) * radius * 1.06];
  });
  const size = Math.min(box.height * 0.11, box.width * 0.06);
  return [
    patch('weaving/bed', ring(middle[0], middle[1], radius * 1.24, 17), 'walnut', { ...cut, shadow: 4 }),
    { kind: 'stitches', stitches: yarn, ink: 'lint', width: 2, flat: true },
    ...cones.flatMap((at, i) => [
      patch(
        `weaving/cone${i}`,
        place(
          [
            [-0.5, -1],
            [0.5, -1],
            [1, 1],
            [-1, 1],
          ],
          { x: at[0], y: at[1], size },
        ),
        'lint',
        { ...cut, seam: 3, thread: 'mid' },
      ),
    ]),
  ];
}

/** The cylinder with its needles, turning. */
export function knittingParts(scene: WeavingScene, box: Box): MovingPart[] {
  const { radius, middle } = cylinderPlaces(box);
  const [x, y] = middle;
  const { perSecond, times } = slowed(scene.perMinute);
  const needles: Stitch[] = [];
  const hooks: Stitch[] = [];
  for (let i = 0; i < NEEDLES; i++) {
    const angle = (i / NEEDLES) * 2 * Math.PI;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    // One needle in four is raised to take its yarn, as four feeders have it.
    const out = radius * (1 + (i % (NEEDLES / FEEDERS) < 2 ? 0.1 : 0));
    needles.push([x + cos * radius * 0.7, y + sin * radius * 0.7, x + cos * out, y + sin * out]);
    hooks.push([x + cos * out, y + sin * out, x + cos * out, y + sin * out]);
  }
  return [
    {
      name: 'cylinder',
      marks: [
        patch('weaving/cylinder', ring(x, y, radius * 0.98, 23), 'faded', { ...cut, shadow: 0 }),
        patch('weaving/tube', ring(x, y, radius * 0.66, 19), 'lint', {
          ...cut,
          shadow: 0,
          seam: radius * 0.12,
          thread: 'mid',
        }),
        { kind: 'stitches', stitches: needles, ink: 'iron', width: 1.8, flat: true },
        { kind: 'stitches', stitches: hooks, ink: 'madder', width: 4.4, flat: true },
      ],
      middle,
      radius: radius * 1.12 + 4,
      motion: { kind: 'turn', turnsPerSecond: perSecond },
      passes: 'belowPieces',
      shows: scene.labels.shows('knitting', scene.perMinute, times),
    },
  ];
}
