import type { DisplayList, Mark, Point, Stitch } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
import { bractShape } from './flower.ts';
import { patch } from './patch.ts';
import { seedShape } from './piece-shapes.ts';
import { type Placing, place } from './point.ts';
import { runningStitches } from './running-stitch.ts';
import { tuftOutline } from './tuft.ts';

/** A closed boll hanging from its stalk: an egg that comes to a point. */
const eggShape: readonly Point[] = [
  [0, -1],
  [0.42, -0.94],
  [0.74, -0.6],
  [0.86, -0.12],
  [0.74, 0.36],
  [0.42, 0.78],
  [0.06, 1.14],
  [-0.06, 1.14],
  [-0.42, 0.78],
  [-0.74, 0.36],
  [-0.86, -0.12],
  [-0.74, -0.6],
  [-0.42, -0.94],
];
/** One wall of the dry boll, pointing up from the middle. */
const burWall: readonly Point[] = [
  [-0.16, -0.1],
  [-0.36, -0.56],
  [-0.22, -0.94],
  [0.04, -1.28],
  [0.26, -0.92],
  [0.36, -0.54],
  [0.16, -0.1],
];

/** A green boll; x and y are its middle. */
export function greenBollMarks(name: string, placing: Required<Placing>): DisplayList {
  const { size } = placing;
  const scissors = { miss: size * 0.03, snip: size * 2, bow: 0.01 };
  const top = place([[0, -0.86]], placing)[0]!;
  const marks: Mark[] = [-0.75, 0.75].map((lean, i) =>
    patch(
      `${name}/bract${i}`,
      place(bractShape, { x: top[0], y: top[1], size: size * 0.95, turn: placing.turn + Math.PI + lean }),
      'leafGreen',
      { shadow: 1.2, seam: 0, scissors, grain: null },
    ),
  );
  marks.push(
    patch(name, place(eggShape, placing), 'youngGreen', {
      shadow: size > 8 ? 2.6 : 1.2,
      seam: 0,
      scissors,
      grain: null,
    }),
  );
  if (size > 6)
    marks.push({
      kind: 'stitches',
      stitches: [-0.3, 0.3].flatMap((x, i) =>
        runningStitches(
          place(
            [
              [x * 0.7, -0.7],
              [x * 1.25, 0],
              [x * 0.5, 0.8],
            ],
            placing,
          ),
          `${name}/suture${i}`,
          {
            on: Math.max(2, size * 0.2),
            off: Math.max(1.6, size * 0.14),
            closed: false,
            uneven: 0,
          },
        ),
      ),
      ink: 'bollGreen',
      width: Math.max(0.9, size * 0.08),
      flat: true,
    });
  return marks;
}

/** An open boll from the front: burs between, a lock of seed cotton on each ray. */
export function openBollMarks(name: string, placing: Required<Placing>, locks: 4 | 5): DisplayList {
  const { x, y, size, turn } = placing;
  const chance = chanceOf(name);
  const big = size > 40;
  const marks: Mark[] = [];
  for (let i = 0; i < locks; i++) {
    const angle = turn + ((i + 0.5) * 2 * Math.PI) / locks;
    marks.push(
      patch(`${name}/bur${i}`, place(burWall, { x, y, size, turn: angle }), 'walnut', {
        shadow: big ? 4 : 1.2,
        seam: big ? size * 0.06 : 0,
        scissors: { miss: size * 0.02, snip: size },
        stitchery: { on: size * 0.06, off: size * 0.05 },
        grain: null,
      }),
    );
  }
  for (let i = 0; i < locks; i++) {
    const angle = turn - Math.PI / 2 + (i * 2 * Math.PI) / locks;
    const at: Point = [x + Math.cos(angle) * size * 0.48, y + Math.sin(angle) * size * 0.48];
    marks.push(...lockMarks(`${name}/lock${i}`, at, size * 0.5, angle, chance));
  }
  return marks;
}

function lockMarks(name: string, [x, y]: Point, radius: number, outwards: number, chance: () => number): Mark[] {
  const outline = tuftOutline(x, y, radius, name, radius > 12 ? 6 : 5, outwards + 0.4);
  const sewn = radius > 16;
  const marks: Mark[] = [
    patch(name, outline, 'lint', {
      shadow: radius > 18 ? 2.6 : 1.2,
      seam: sewn ? radius * 0.12 : 0,
      thread: 'mid',
      stitchery: { on: Math.max(3, radius * 0.14), off: Math.max(2.4, radius * 0.12) },
      threadWidth: Math.max(1, Math.min(1.7, radius * 0.03)),
      scissors: 'asDrawn',
      grain: null,
    }),
  ];
  // Fibres are drawn as loose curls that follow the lock round, never as rays: rays would make a flower of it.
  const count = radius > 40 ? 20 : radius > 16 ? 11 : 4;
  const stitches: Stitch[] = Array.from({ length: count }, (_, i) => {
    const around = i * 2.4 + spread(chance, 0.4);
    const out = radius * 0.78 * Math.sqrt((i + 0.6) / count);
    const [cx, cy] = [x + Math.cos(around) * out, y + Math.sin(around) * out];
    const heading = around + Math.PI / 2 + spread(chance, 0.5);
    const half = radius * (0.09 + 0.05 * chance());
    const [dx, dy] = [Math.cos(heading) * half, Math.sin(heading) * half];
    const [mx, my] = [cx + Math.cos(around) * half * 0.7, cy + Math.sin(around) * half * 0.7];
    return [[cx - dx, cy - dy, mx, my] as const, [mx, my, cx + dx, cy + dy] as const];
  }).flat();
  marks.push({
    kind: 'stitches',
    stitches,
    ink: 'faded',
    width: Math.max(0.8, Math.min(2.4, radius * 0.05)),
    flat: true,
  });
  return marks;
}

/** How far the fibres of a boll have come, each 0 to 1: their length, and the wall they have laid down inside. */
export interface FibreGrowth {
  readonly length: number;
  readonly wall: number;
}
const fullGrown: FibreGrowth = { length: 1, wall: 1 };

/**
 * A boll cut across, from the tip: the wall, a chamber for each lock, each seed in its own burst of fibre.
 * @param seeds seeds in the whole boll, dealt out to the locks; every one is drawn
 */
export function cutBollMarks(
  name: string,
  placing: Required<Placing>,
  locks: 4 | 5,
  seeds: number,
  growth: FibreGrowth = fullGrown,
): DisplayList {
  const { x, y, size, turn } = placing;
  const marks: Mark[] = [
    patch(`${name}/wall`, bollRing(x, y, size, locks, turn, 0.05), 'bollGreen', {
      shadow: 6,
      seam: size * 0.05,
      thread: 'youngGreen',
      scissors: { miss: size * 0.008, snip: size * 0.3, bow: 0.01 },
    }),
    patch(`${name}/pith`, bollRing(x, y, size * 0.88, locks, turn, 0.05), 'youngGreen', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: size * 0.006 },
    }),
  ];
  for (let lock = 0; lock < locks; lock++) {
    const angle = turn + (lock * 2 * Math.PI) / locks;
    const share = Math.floor(seeds / locks) + (lock < seeds % locks ? 1 : 0);
    marks.push(...chamberMarks(`${name}/chamber${lock}`, { x, y, size, angle, locks, seeds: share, growth }));
  }
  return marks;
}

/** The wall is lobed a little, one lobe to a lock. */
const bollRing = (x: number, y: number, size: number, locks: number, turn: number, lobed: number): Point[] =>
  Array.from({ length: 40 }, (_, i) => {
    const angle = turn + (i / 40) * 2 * Math.PI - Math.PI / 2;
    const reach = size * (1 - lobed + lobed * Math.cos(locks * (angle - turn + Math.PI / 2)));
    return [x + Math.cos(angle) * reach, y + Math.sin(angle) * reach];
  });

interface Chamber {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly angle: number;
  readonly locks: number;
  readonly seeds: number;
  readonly growth: FibreGrowth;
}

function chamberMarks(name: string, { x, y, size, angle, locks, seeds, growth }: Chamber): Mark[] {
  const half = (Math.PI / locks) * 0.86;
  const outer = size * 0.78;
  const inner = size * 0.16;
  const wedge: Point[] = [];
  for (let i = 0; i <= 6; i++) {
    const a = angle - Math.PI / 2 - half + (i / 6) * 2 * half;
    const squeeze = 1 - 0.1 * Math.abs(i / 3 - 1) ** 3;
    wedge.push([x + Math.cos(a) * outer * squeeze, y + Math.sin(a) * outer * squeeze]);
  }
  for (const side of [0.5, -0.5]) {
    const a = angle - Math.PI / 2 + side * half;
    wedge.push([x + Math.cos(a) * inner, y + Math.sin(a) * inner]);
  }
  const marks: Mark[] = [
    patch(name, wedge, 'lint', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: size * 0.008, snip: size * 0.2 },
    }),
  ];
  const chance = chanceOf(`${name}/seats`);
  const seatSize = size * 0.066;
  const fibres: Stitch[] = [];
  const seats = seatsOf(seeds).map(([across, out]): Point => {
    const reach = size * (0.29 + 0.38 * out);
    const a = angle - Math.PI / 2 + across * half * (0.42 + 0.24 * out);
    return [x + Math.cos(a) * reach + spread(chance, size * 0.006), y + Math.sin(a) * reach];
  });
  for (const [sx, sy] of seats)
    for (let k = 0; k < 14; k++) {
      const a = (k / 14) * 2 * Math.PI + spread(chance, 0.15);
      const from = seatSize * 1.15;
      const to = seatSize * (1.2 + (0.5 + 0.5 * chance()) * growth.length);
      fibres.push([
        sx + Math.cos(a) * from,
        sy + Math.sin(a) * from,
        sx + Math.cos(a + 0.25) * to,
        sy + Math.sin(a + 0.25) * to,
      ]);
    }
  marks.push({
    kind: 'stitches',
    stitches: fibres,
    ink: 'mid',
    width: Math.max(0.7, size * (0.005 + 0.007 * growth.wall)),
    flat: true,
  });
  seats.forEach(([sx, sy], i) => {
    marks.push(
      patch(
        `${name}/seed${i}`,
        place(seedShape, { x: sx, y: sy, size: seatSize, turn: angle + Math.PI + spread(chance, 0.4) }),
        'walnut',
        {
          shadow: 1.2,
          seam: 0,
          grain: null,
          scissors: { miss: seatSize * 0.04 },
        },
      ),
    );
  });
  return marks;
}

/** Seats for the seeds of one lock: two rows that widen outwards; across -1 to 1, out 0 to 1. */
function seatsOf(seeds: number): [across: number, out: number][] {
  const rows = Math.max(1, Math.ceil(seeds / 2));
  return Array.from({ length: seeds }, (_, i) => {
    const row = Math.floor(i / 2);
    const out = rows === 1 ? 0.5 : row / (rows - 1);
    const alone = i === seeds - 1 && seeds % 2 === 1;
    return [alone ? 0 : i % 2 ? 1 : -1, alone ? out : Math.min(1, out + (i % 2 ? 0.06 : -0.02))];
  });
}
