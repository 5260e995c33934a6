import { patch } from '../../cloth/patch.ts';
import { arc, type Box, place, ring } from '../../cloth/point.ts';
import type { DisplayList, Mark, Point, Stitch } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { disc, plate, sawDisc, spikedCylinder, stitchedRing } from '../machines/machine-parts.ts';
import { slowed } from '../slowed.ts';
import type { PrepareId, SpinningScene, TurningId } from './spinning-input.ts';

/** A machine of the row: what stands still under the lint, and what turns over it. */
export interface Prepared {
  readonly still: DisplayList;
  readonly parts: readonly MovingPart[];
}

/** A part that turns about a middle, at its machine's own speed, slowed. */
export function turning(
  scene: Pick<SpinningScene, 'speeds' | 'labels'>,
  name: string,
  what: TurningId,
  middle: Point,
  radius: number,
  marks: DisplayList,
  way: 1 | -1 = 1,
): MovingPart {
  const { perSecond, times } = slowed(scene.speeds[what]);
  return {
    name,
    marks,
    middle,
    radius: radius + 6,
    motion: { kind: 'turn', turnsPerSecond: way * perSecond },
    passes: 'abovePieces',
    shows: scene.labels.shows(what, scene.speeds[what], times),
  };
}

const housing = (name: string, { x, y, width, height }: Box): Mark =>
  plate(
    name,
    [
      [x + 3, y],
      [x + width - 1, y + 2],
      [x + width, y + height - 2],
      [x, y + height],
    ],
    'faded',
    4,
    width > 60 ? 5 : 0,
  );

/** Opening: two beaters set with pins pluck the bale apart, one above the other. */
function opening(scene: SpinningScene, box: Box): Prepared {
  const radius = box.width * 0.25;
  const middles: Point[] = [
    [box.x + box.width * 0.36, box.y + box.height * 0.33],
    [box.x + box.width * 0.64, box.y + box.height * 0.67],
  ];
  return {
    still: [housing('spinning/opening', box)],
    parts: middles.map((middle, i) =>
      turning(
        scene,
        'beater',
        'beater',
        middle,
        radius,
        spikedCylinder('beater', middle[0], middle[1], radius, 'indigo'),
        i ? -1 : 1,
      ),
    ),
  };
}

/** The card: flats over one great cylinder, the taker-in before it, the doffer behind. */
function carding(scene: SpinningScene, box: Box): Prepared {
  const r = box.width * 0.34;
  const [x, y] = [box.x + box.width * 0.5, box.y + box.height * 0.52];
  const flats = arc(x, y, r * 1.17, Math.PI * 1.14, Math.PI * 1.86, 9);
  return {
    still: [
      housing('spinning/cardHousing', box),
      ...flats.map((at, i) =>
        patch(
          `spinning/flat${i}`,
          ring(at[0], at[1], r * 0.13, 4, Math.PI * 1.14 + (i / 9) * Math.PI * 0.72 + Math.PI / 4),
          i % 2 ? 'weld' : 'weldPale',
          {
            shadow: 1.2,
            seam: 0,
            grain: null,
            scissors: 'asDrawn',
          },
        ),
      ),
      sawDisc('spinning/takerIn', x - r * 1.16, y + r * 0.52, r * 0.3, 16, 'mid', 2.6),
      sawDisc('spinning/doffer', x + r * 1.14, y + r * 0.44, r * 0.36, 22, 'mid', 2.6),
    ],
    parts: [
      turning(scene, 'cardCylinder', 'card', [x, y], r, [
        sawDisc('spinning/cylinder', x, y, r, 48, 'indigo', 0),
        stitchedRing('spinning/wire1', x, y, r * 0.8),
        stitchedRing('spinning/wire2', x, y, r * 0.6, 'faded'),
        ...disc('spinning/drum', x, y, r * 0.42, 'madder', 0),
        {
          kind: 'stitches',
          stitches: [
            [x, y - r * 0.34, x, y + r * 0.34],
            [x - r * 0.34, y, x + r * 0.34, y],
          ],
          ink: 'thread',
          width: 1.6,
          flat: true,
        },
      ]),
    ],
  };
}

/** The comber: jaws hold a fringe, a cylinder half set with needles combs the short fibre out of it. */
function combing(scene: SpinningScene, box: Box): Prepared {
  const r = box.width * 0.29;
  const [x, y] = [box.x + box.width * 0.54, box.y + box.height * 0.6];
  const needles: Stitch[] = arc(0, 0, 1, -Math.PI * 0.9, Math.PI * 0.16, 22).map(([px, py]) => [
    x + px * r * 0.86,
    y + py * r * 0.86,
    x + px * r * 1.16,
    y + py * r * 1.16,
  ]);
  const jaw = (points: readonly Point[], ink: 'madder' | 'spentMadder', name: string): Mark =>
    plate(name, place(points, { x, y, size: r }), ink, 2.6, 0);
  return {
    still: [
      housing('spinning/comberHousing', box),
      jaw(
        [
          [-1.5, -1.66],
          [-0.6, -1.62],
          [-0.16, -1.3],
          [-0.4, -1.22],
          [-1.5, -1.32],
        ],
        'madder',
        'spinning/jawTop',
      ),
      jaw(
        [
          [-1.5, -1.2],
          [-0.44, -1.12],
          [-0.2, -1.04],
          [-0.6, -0.92],
          [-1.5, -0.94],
        ],
        'spentMadder',
        'spinning/jawFoot',
      ),
    ],
    parts: [
      turning(scene, 'comberCylinder', 'comber', [x, y], r * 1.16, [
        { kind: 'stitches', stitches: needles, ink: 'ink', width: Math.max(1.2, r * 0.05), flat: true },
        ...disc('spinning/comb', x, y, r, 'indigo', 0),
        ...disc('spinning/combDrum', x, y, r * 0.5, 'mid', 0),
        ...disc('spinning/combHub', x, y, r * 0.16, 'weld', 0),
      ]),
    ],
  };
}

/** Drawing: pairs of rollers, each faster than the one before, lay the fibres straight. It takes nothing out. */
function drawing(_: SpinningScene, box: Box): Prepared {
  const r = box.width * 0.11;
  return {
    still: [
      housing('spinning/drawHousing', box),
      ...[0.22, 0.52, 0.82].flatMap((share, i) =>
        [-1, 1].flatMap((side) =>
          disc(
            `spinning/draw${i}/${side}`,
            box.x + box.width * share,
            box.y + box.height * (0.5 + side * 0.3),
            r * (i === 2 ? 1.3 : 1),
            i === 2 ? 'madder' : side < 0 ? 'indigo' : 'mid',
            2.6,
          ),
        ),
      ),
    ],
    parts: [],
  };
}

const drawn: Readonly<Record<PrepareId, (scene: SpinningScene, box: Box) => Prepared>> = {
  blowroom: opening,
  card: carding,
  comber: combing,
  drawing,
};

export const prepared = (scene: SpinningScene, id: PrepareId, box: Box): Prepared => drawn[id](scene, box);
