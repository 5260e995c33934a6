import type { InkName } from '../../../style/inks.ts';
import { patch } from '../../cloth/patch.ts';
import { arc, type Box, rectangle, ring } from '../../cloth/point.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import type { CleaningInput, LineKind } from './cleaning-input.ts';
import type { PlacedMachine, Way } from './cleaning-layout.ts';
import { wheel } from './wheels.ts';

/** A machine cut open: what stands still, what turns, and the way of the cotton through it. */
export interface MachineArt {
  readonly still: readonly Mark[];
  readonly parts: readonly MovingPart[];
  /** From where the cotton enters to where it leaves, both at the band's height. */
  readonly track: readonly Point[];
  /** Where trash leaves it. */
  readonly dropX: number;
}

type Place = Pick<PlacedMachine, 'box' | 'way' | 'bandY'>;
type Draw = (input: CleaningInput, name: string, place: Place) => MachineArt;

/** Places in a box: 0 to 1 along the way of the cotton, 0 to 1 down. */
const spotIn =
  ({ x, y, width, height }: Box, way: Way) =>
  (along: number, down: number): Point => [
    way === 1 ? x + along * width : x + width - along * width,
    y + down * height,
  ];

export function housing(name: string, points: readonly Point[], ink: InkName, side: number): Mark {
  return patch(name, points, ink, {
    shadow: 4,
    seam: side > 46 ? 5 : 0,
    threadWidth: 1.5,
    scissors: { miss: 1.2, snip: 70 },
  });
}

/** Grid bars around a wheel, with room between them for what is slung off. Angles in radians. */
export function gridBars(
  name: string,
  x: number,
  y: number,
  r: number,
  from: number,
  to: number,
  count: number,
): Mark[] {
  const side = Math.max(1.8, Math.min(4.5, r * 0.1));
  return arc(x, y, r, from, to, count - 1).map(([bx, by], i) =>
    patch(`${name}/${i}`, ring(bx, by, side, 4, from + ((to - from) * i) / (count - 1)), 'iron', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  );
}

/** Three spiked cylinders, one above another, take the face of the module apart. */
const moduleFeeder: Draw = (input, name, { box, way, bandY }) => {
  const at = spotIn(box, way);
  const r = Math.min(box.width * 0.36, box.height * 0.155);
  const [x] = at(0.5, 0);
  return {
    still: [housing(name, [at(0.06, 0), at(1, 0.03), at(0.94, 1), at(0, 0.97)], 'fadedPale', box.width)],
    parts: [0.2, 0.5, 0.8].map((down) => wheel(input, 'disperser', { x, y: at(0, down)[1], r }, -way as Way)),
    track: [
      [at(0, 0)[0], bandY],
      [at(1, 0)[0], bandY],
    ],
    dropX: x,
  };
};

/** A telescoping pipe with a wide mouth; the suction of a fan lifts the cotton out of the wagon. */
const suctionPipe: Draw = (_, name, { box, way, bandY }) => {
  const at = spotIn(box, way);
  const wide = box.height * 0.36;
  const lip = (along: number): Mark =>
    patch(`${name}/lip${along}`, rectangle(at(along, 0)[0] - 4, bandY - wide * 0.62, 8, wide * 1.24), 'mid', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    });
  return {
    still: [
      patch(
        name,
        taperedStrip(
          [
            [at(0, 0)[0], bandY],
            [at(1, 0)[0], bandY],
          ],
          wide * 1.5,
          wide,
        ),
        'fadedPale',
        { shadow: 4, seam: 5, scissors: { miss: 1.2 } },
      ),
      lip(0.34),
      lip(0.68),
    ],
    parts: [],
    track: [
      [at(0, 0)[0], bandY],
      [at(1, 0)[0], bandY],
    ],
    dropX: at(0.5, 0)[0],
  };
};

const SHELVES = 4;
/** A tower with shelves: hot air carries the cotton to and fro over them, from the top to the bottom. */
const dryer: Draw = (_, name, { box, way, bandY }) => {
  const at = spotIn(box, way);
  const thick = Math.max(2.4, box.height * 0.026);
  const shelf = (i: number): Mark => {
    const y = at(0, 0.22 + (i * 0.62) / (SHELVES - 1))[1];
    const from = i % 2 ? 0.34 : 0.04;
    const left = Math.min(at(from, 0)[0], at(from + 0.62, 0)[0]);
    return patch(`${name}/shelf${i}`, rectangle(left, y - thick / 2, box.width * 0.62, thick), 'madder', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    });
  };
  const turns = Array.from(
    { length: SHELVES },
    (_, i): Point => at(i % 2 ? 0.2 : 0.8, 0.17 + (i * 0.62) / (SHELVES - 1)),
  );
  return {
    still: [
      housing(name, [at(0.04, 0), at(0.96, 0.02), at(1, 0.99), at(0, 1)], 'blush', box.width),
      ...Array.from({ length: SHELVES }, (_, i) => shelf(i)),
    ],
    parts: [],
    track: [
      [at(0, 0)[0], bandY],
      at(0.14, 0.1),
      ...turns.flatMap((turn, i): Point[] => (i + 1 < turns.length ? [turn, [turn[0], turns[i + 1]![1] - 2]] : [turn])),
      at(0.86, 0.92),
      [at(1, 0)[0], bandY],
    ],
    dropX: at(0.5, 0)[0],
  };
};

const CYLINDERS = 6;
/** Six spiked cylinders, rising; they scrub the cotton along over grid rods, and fine trash falls between the rods. */
const cylinderCleaner: Draw = (input, name, { box, way, bandY }) => {
  const at = spotIn(box, way);
  const [low, high] = [at(0.09, 0.66), at(0.91, 0.3)];
  const step = Math.hypot(high[0] - low[0], high[1] - low[1]) / (CYLINDERS - 1);
  const r = Math.min(step * 0.5, box.height * 0.17);
  const middles = Array.from(
    { length: CYLINDERS },
    (_, i): Point => [
      low[0] + ((high[0] - low[0]) * i) / (CYLINDERS - 1),
      low[1] + ((high[1] - low[1]) * i) / (CYLINDERS - 1),
    ],
  );
  const half = (r * 1.75) / box.height;
  return {
    still: [
      housing(
        name,
        [
          at(0, 0.66 - half),
          at(0.93, 0.3 - half),
          at(1, 0.3 + half),
          at(0.98, 0.44 + half),
          at(0.1, 0.8 + half),
          at(0, 0.72 + half),
        ],
        'faded',
        box.height,
      ),
      ...middles.flatMap(([x, y], i) =>
        gridBars(`${name}/rods${i}`, x, y, r * 1.22, Math.PI * 0.24, Math.PI * 0.76, 4),
      ),
    ],
    parts: middles.map(([x, y]) => wheel(input, 'cylinder', { x, y, r }, -way as Way)),
    track: [
      [at(0, 0)[0], bandY],
      [low[0], low[1] + r * 1.02],
      ...middles.slice(1).map(([x, y]): Point => [x, y + r * 1.02]),
      [at(1, 0)[0], bandY],
    ],
    dropX: at(0.5, 0)[0],
  };
};

/**
 * A saw takes hold of the cotton and slings sticks and burs off against grid bars; a second, lower saw catches what cotton goes
 * with them. Brushes behind take the cotton off.
 */
const stickMachine: Draw = (input, name, { box, way, bandY }) => {
  const at = spotIn(box, way);
  const r = Math.min(box.width * 0.34, box.height * 0.335);
  const [x, y] = at(0.42, 0.37);
  const [lowX, lowY] = at(0.6, 0.8);
  const low = r * 0.46;
  const [brushX, brushY] = [x + way * r * 1.3, y + r * 0.08];
  const down = way === 1 ? ([0.36, 0.98] as const) : ([0.02, 0.64] as const);
  return {
    still: [
      housing(name, [at(0.02, 0.02), at(0.97, 0), at(1, 0.97), at(0, 1)], 'faded', box.width),
      ...gridBars(`${name}/bars`, x, y, r * 1.17, Math.PI * down[0], Math.PI * down[1], 7),
      ...gridBars(`${name}/lowBars`, lowX, lowY, low * 1.24, Math.PI * 0.2, Math.PI * 0.8, 4),
    ],
    parts: [
      wheel(input, 'extractorSaw', { x, y, r }, -way as Way),
      wheel(input, 'extractorSaw', { x: lowX, y: lowY, r: low }, -way as Way),
      wheel(input, 'brush', { x: brushX, y: brushY, r: r * 0.3 }, way),
    ],
    track: [
      [at(0, 0)[0], bandY],
      [x - way * r * 0.7, y - r * 0.72],
      ...arc(x, y, r * 0.98, way === 1 ? Math.PI : 0, way === 1 ? 0.12 : Math.PI - 0.12, 6),
      [brushX, brushY + r * 0.1],
      [at(1, 0)[0], bandY],
    ],
    dropX: at(0.34, 0)[0],
  };
};

const draws: Readonly<Record<LineKind, Draw>> = { moduleFeeder, suctionPipe, dryer, cylinderCleaner, stickMachine };

export const lineMachine = (input: CleaningInput, { machine, ...place }: PlacedMachine): MachineArt =>
  draws[machine.kind](input, `cleaning/${machine.id}`, place);
