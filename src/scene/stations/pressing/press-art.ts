import type { InkName } from '../../../style/inks.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import type { MovingPart } from '../../scene-frame.ts';
import { binFill } from '../flow/bin.ts';
import type { PressingInput } from './pressing-input.ts';
import type { PressingLayout } from './pressing-layout.ts';

/** Shares of the work at which the box is full and turned under the ram, the bale is pressed, and it is tied. */
export const FULL_AT = 0.5;
export const PRESSED_AT = 0.78;
const TIED_AT = 0.92;

const held = (value: number): number => Math.min(1, Math.max(0, value));
const WALL_PX = 6;
/** So much of the next bale is in its box when this one is done. */
const MOST_OF_NEXT = 0.8;

/** What is inside a box's walls. */
export const insideOf = ({ x, y, width, height }: Box): Box => ({
  x: x + WALL_PX,
  y,
  width: width - 2 * WALL_PX,
  height: height - 2,
});

/** The lint under the ram: from a full box down to a bale's own thickness. */
export function pressedBox({ baleShape }: PressingInput, { pressBox }: PressingLayout, progress: number): Box {
  const inside = insideOf(pressBox);
  const thick = (inside.width * baleShape.thick) / baleShape.long;
  const done = held((progress - FULL_AT) / (PRESSED_AT - FULL_AT));
  const height = inside.height + (thick - inside.height) * done;
  return { ...inside, y: inside.y + inside.height - height, height };
}

const slab = (name: string, { x, y, width, height }: Box, ink: InkName, seam = 0): Mark =>
  patch(name, rectangle(x, y, width, height), ink, {
    shadow: 4,
    seam,
    scissors: { miss: 1.2, snip: 90 },
    grain: height > width ? Math.PI / 2 : 0,
  });

/** Posts, beam, turntable, and the backs of the two boxes. */
export function pressStill({ beam, turntable, posts, trampBox, pressBox }: PressingLayout): Mark[] {
  const back = (name: string, box: Box): Mark =>
    patch(name, rectangle(box.x, box.y, box.width, box.height), 'fadedPale', {
      shadow: 1.2,
      seam: 0,
      scissors: { miss: 1 },
    });
  const middle = turntable.x + turntable.width / 2;
  const y = turntable.y + turntable.height / 2;
  return [
    ...posts.map((post, i) => slab(`pressing/post${i}`, post, 'iron')),
    back('pressing/trampBack', trampBox),
    back('pressing/pressBack', pressBox),
    slab('pressing/turntable', turntable, 'mid', turntable.height > 22 ? 5 : 0),
    patch('pressing/pivot', rectangle(middle - 15, y - 4, 30, 8), 'weld', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8 },
    }),
    slab('pressing/beam', beam, 'iron', beam.height > 16 ? 5 : 0),
  ];
}

/** The near walls of a box, at its sides. */
function walls(name: string, { x, y, width, height }: Box): Mark[] {
  return [x, x + width - WALL_PX].map((left, i) =>
    patch(`${name}/${i}`, rectangle(left, y - 4, WALL_PX, height + 4), 'walnut', {
      shadow: 2.6,
      seam: 0,
      scissors: { miss: 0.6, snip: 120 },
      grain: null,
    }),
  );
}

/** The tramper's foot on its rod, which treads the lint down. */
export function tramperPart(
  { trampsPerMinute, labels }: PressingInput,
  { tramper, trampBox }: PressingLayout,
): MovingPart {
  const { x, top, foot, stroke } = tramper;
  const name = 'pressing/tramper';
  const wide = trampBox.width * 0.41;
  const thick = Math.max(7, (foot - top) * 0.5);
  const rod = Math.max(7, trampBox.width * 0.09);
  const start = top - stroke * 0.75;
  return {
    name,
    marks: [
      patch(`${name}/rod`, rectangle(x - rod / 2, start, rod, foot - thick - start), 'mid', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: 'asDrawn',
      }),
      patch(
        `${name}/foot`,
        [
          [x - wide * 0.8, foot - thick],
          [x + wide * 0.8, foot - thick],
          [x + wide, foot],
          [x - wide, foot],
        ],
        'indigo',
        { shadow: 2.6, seam: thick > 15 ? 4 : 0, grain: null, scissors: { miss: 0.8 } },
      ),
    ],
    middle: [x, (start + foot) / 2],
    radius: Math.hypot(wide, (foot - start) / 2) + 4,
    motion: { kind: 'stroke', by: [0, stroke], strokesPerSecond: trampsPerMinute / 60 },
    passes: 'abovePieces',
    shows: labels.shows,
  };
}

/** The loud piece: platen and ram, as far down as the work has come, and the bale with its ties. */
export function pressOver(input: PressingInput, layout: PressingLayout, progress: number): Mark[] {
  const { beam, pressBox, trampBox } = layout;
  const { era } = input;
  const bale = pressedBox(input, layout, progress);
  const lowered = progress >= FULL_AT;
  const released = progress >= 0.985;
  const platenTall = pressBox.height * 0.19;
  const up = beam.y + beam.height + 10;
  const bottom = lowered ? bale.y - (released ? pressBox.height * 0.07 : 0) : up + platenTall;
  const platen: Box = {
    x: pressBox.x - 9,
    y: Math.max(up, bottom - platenTall),
    width: pressBox.width + 18,
    height: platenTall,
  };
  return [
    ...(lowered ? [] : [chalkedBale(input, layout, bottom)]),
    ...nextBale(layout, progress),
    ...walls('pressing/trampWall', trampBox),
    ...(progress < PRESSED_AT ? walls('pressing/pressWall', pressBox) : []),
    ...(progress < PRESSED_AT ? [] : era === 'thirties' ? bagging(bale) : film(bale)),
    ...ties(input, bale, progress),
    group('ram', ram(layout, platen)),
  ];
}

/** While its box is tramped full, chalk shows where the bale will be, with its ties, and the way of the ram down to it. */
function chalkedBale(input: PressingInput, layout: PressingLayout, ramY: number): Mark {
  const { x, y, width, height } = pressedBox(input, layout, PRESSED_AT);
  const middle = x + width / 2;
  const pitch = width / input.baleShape.ties;
  const dashed = { on: 6, off: 5, closed: false } as const;
  const ties = Array.from({ length: input.baleShape.ties }, (_, i): Stitch[] => {
    const at = x + pitch * (i + 0.5);
    return runningStitches(
      [
        [at, y + 3],
        [at, y + height - 3],
      ],
      `pressing/chalk${i}`,
      dashed,
    );
  }).flat();
  const head = Math.min(10, width * 0.08);
  const [from, to] = [ramY + 14, y - 8];
  return group('chalkedBale', [
    {
      kind: 'stitches',
      stitches: [
        ...runningStitches(rectangle(x + 2, y, width - 4, height - 2), 'pressing/chalk', { on: 8, off: 5 }),
        ...ties,
        ...runningStitches(
          [
            [middle, from],
            [middle, to],
          ],
          'pressing/chalkWay',
          dashed,
        ),
        [middle - head, to - head, middle, to],
        [middle + head, to - head, middle, to],
      ],
      ink: 'indigo',
      width: 1.5,
      flat: true,
    },
  ]);
}

function ram({ beam }: PressingLayout, platen: Box): Mark[] {
  const middle = platen.x + platen.width / 2;
  const rod = platen.width * 0.17;
  const { x, y, width, height } = platen;
  const inset = Math.max(6, height * 0.2);
  const peak: Point[] = [
    [x + width * 0.14, y + height - inset],
    [middle, y + inset],
    [x + width * 0.86, y + height - inset],
  ];
  return [
    patch(
      'pressing/ram/rod',
      rectangle(middle - rod / 2, beam.y + beam.height - 3, rod, y - beam.y - beam.height + 6),
      'mid',
      {
        shadow: 2.6,
        seam: 0,
        scissors: { miss: 0.8, snip: 90 },
        grain: null,
      },
    ),
    patch(
      'pressing/ram/platen',
      [
        [x + 8, y],
        [x + width - 8, y],
        [x + width, y + height],
        [x, y + height],
      ],
      'indigo',
      { shadow: 6, seam: height > 24 ? 5 : 0, scissors: { miss: 1.2, snip: 80 } },
    ),
    {
      kind: 'stitches',
      stitches: runningStitches(peak, 'pressing/ram/peak', { on: 9, off: 6, closed: false }),
      ink: 'weld',
      width: 2.2,
    },
  ];
}

/** The ties, put on one after another while the ram holds, and the bale's own bulge between them. */
function ties({ baleShape, era }: PressingInput, { x, y, width, height }: Box, progress: number): Mark[] {
  if (progress < PRESSED_AT) return [];
  const on = Math.round(baleShape.ties * held((progress - PRESSED_AT) / (TIED_AT - PRESSED_AT)));
  const pitch = width / baleShape.ties;
  const thick = Math.max(3, width * (era === 'thirties' ? 0.026 : 0.034));
  const ink: InkName = era === 'thirties' ? 'iron' : 'madder';
  return [
    group(
      'ties',
      Array.from({ length: on }, (_, i) =>
        patch(`pressing/tie${i}`, rectangle(x + pitch * (i + 0.5) - thick / 2, y - 1.5, thick, height + 3), ink, {
          shadow: 1.2,
          seam: 0,
          grain: null,
          scissors: { miss: 0.5, snip: 120, bow: 0.004 },
        }),
      ),
      on,
    ),
  ];
}

/** The cloth of a pressed bale, under its tufts. */
export const baleCloth = (input: PressingInput, layout: PressingLayout): Mark => {
  const { x, y, width, height } = pressedBox(input, layout, 1);
  return patch('pressing/bale', rectangle(x - 3, y, width + 6, height), 'lint', {
    shadow: 4,
    seam: 0,
    scissors: { miss: 1.6, snip: 40 },
  });
};

/** The next bale's lint in the box that was turned back under the tramper. */
function nextBale({ trampBox }: PressingLayout, progress: number): Mark[] {
  const inside = insideOf(trampBox);
  const area = inside.width * inside.height * MOST_OF_NEXT * held((progress - FULL_AT) / (1 - FULL_AT));
  return binFill('pressing/next', { ...inside, x: inside.x - 5, width: inside.width + 10 }, 'lint', area);
}

/** Clear film around a bale of today: its hem, and the lint seen through it. */
const film = ({ x, y, width, height }: Box): Mark[] => [
  {
    kind: 'stitches',
    stitches: runningStitches(rectangle(x + 2, y + 2, width - 4, height - 4), 'pressing/film', { on: 8, off: 5 }),
    ink: 'mid',
    width: 1.6,
  },
];

/** Jute bagging at the foot and the head of a bale of the 1930s; its sides show lint. */
const bagging = ({ x, y, width, height }: Box): Mark[] =>
  [y - 1, y + height * 0.76].map((top, i) =>
    patch(`pressing/bagging${i}`, rectangle(x - 1, top, width + 2, height * 0.25), 'walnutPale', {
      shadow: 1.2,
      seam: 0,
      scissors: { miss: 1.4, snip: 30 },
    }),
  );
