import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { arc, place } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point, Stitch } from '../../display-list.ts';
import {
  bar,
  type DrawMachine,
  disc,
  gridBars,
  type MachineSpace,
  middleOf,
  plate,
  sawDisc,
  slab,
  spikedCylinder,
  stitchedRing,
} from './machine-parts.ts';

/** A drying tower: hot air carries the cotton back and forth over shelves. */
export const dryer: DrawMachine = (space) => {
  const { box, name } = space;
  const shelves = 6;
  const marks: Mark[] = [slab(space, 'spentMadder')];
  for (let i = 0; i < shelves; i++) {
    const y = box.y + (box.height * (i + 0.9)) / (shelves + 0.8);
    const x = box.x + box.width * (i % 2 ? 0.26 : 0.08);
    marks.push(bar(`${name}/shelf${i}`, x, y, box.width * 0.66, Math.max(3, box.height * 0.022), 'madder', 1.2));
  }
  return marks;
};

/** Six spiked cylinders climb over grid rods. */
export const cylinderCleaner: DrawMachine = (space) => {
  const { box, name } = space;
  const loud = box.width > 120;
  const count = loud ? 4 : 3;
  const radius = loud ? box.width / (count * 1.9) : Math.min(box.width * 0.4, box.height / (count * 2.4));
  const marks: Mark[] = [slab(space)];
  for (let i = 0; i < count; i++) {
    const share = (i + 0.5) / count;
    const x = loud ? box.x + box.width * (0.04 + 0.92 * share) : box.x + box.width / 2;
    const y = loud ? box.y + box.height * (0.68 - 0.34 * share) : box.y + box.height * (0.1 + 0.8 * share);
    if (loud) marks.push(...gridBars(`${name}/rods${i}`, x, y, radius * 1.24, Math.PI * 0.2, Math.PI * 0.8, 6));
    marks.push(...spikedCylinder(`${name}/cylinder${i}`, x, y, radius));
  }
  return marks;
};

/** A stick machine: saws take hold of the cotton and sling burs and sticks against grid bars. */
export const stickMachine: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  const small = unit < 50;
  const saw = (id: string, sx: number, sy: number, r: number): Mark[] => [
    ...(small ? [] : gridBars(`${name}/bars${id}`, sx, sy, r * 1.2, Math.PI * 0.12, Math.PI * 0.88, 7)),
    sawDisc(`${name}/saw${id}`, sx, sy, r, small ? 12 : 22, 'indigo'),
    ...(small ? [] : [stitchedRing(`${name}/ring${id}`, sx, sy, r * 0.66)]),
    ...disc(`${name}/drum${id}`, sx, sy, r * 0.46, 'madder'),
    ...disc(`${name}/hub${id}`, sx, sy, r * 0.16, 'weld', 0),
  ];
  if (small)
    return [
      slab(space),
      ...saw('a', x, y - 0.3 * space.box.height, unit * 0.74),
      ...saw('b', x, y + 0.2 * space.box.height, unit * 0.74),
    ];
  return [
    slab(space),
    ...saw('a', x - 0.2 * unit, y - 0.16 * unit, unit * 0.74),
    ...saw('b', x + 0.64 * unit, y + 0.56 * unit, unit * 0.34),
  ];
};

/** The distributor: an auger over the feeders; what they cannot take runs over the end and comes round again. */
export const distributor: DrawMachine = (space) => {
  const { box, name } = space;
  const auger = Math.min(box.width * 0.3, 40);
  const x = box.x + box.width / 2 - auger / 2;
  const flights = Math.max(4, Math.round(box.height / 24));
  const step = box.height / flights;
  const loop: Point[] = [
    [box.x + box.width * 0.78, box.y + box.height * 0.92],
    [box.x + box.width * 1.06, box.y + box.height * 0.92],
    [box.x + box.width * 1.06, box.y + box.height * 0.06],
    [box.x + box.width * 0.78, box.y + box.height * 0.06],
  ];
  return [
    plate(
      `${name}/overflow`,
      taperedStrip(loop, Math.min(9, box.width * 0.18), Math.min(9, box.width * 0.18)),
      'madder',
      2.6,
      0,
    ),
    slab(space),
    ...Array.from({ length: flights }, (_, i) =>
      patch(
        `${name}/flight${i}`,
        [
          [x, box.y + step * (i + 0.2)],
          [x + auger, box.y + step * (i - 0.1) + 4],
          [x + auger, box.y + step * (i + 0.3) + 4],
          [x, box.y + step * (i + 0.6)],
        ],
        i % 2 ? 'indigo' : 'mid',
        { shadow: 1.2, seam: 0, grain: null, scissors: { miss: 0.6 } },
      ),
    ),
  ];
};

/** The extractor-feeder: a last saw and a brush above the stand. */
export const feeder: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { box, name } = space;
  return [
    slab(space),
    ...spikedCylinder(`${name}/roll`, x, y - 0.24 * box.height, unit * 0.66),
    sawDisc(`${name}/saw`, x, y + 0.2 * box.height, unit * 0.8, 14, 'mid'),
    ...disc(`${name}/hub`, x, y + 0.2 * box.height, unit * 0.3, 'ink'),
  ];
};

/**
 * A saw stand from the side. Saw, rib, saw, rib: each rib is a curved bar that stands between two saws, so that the teeth
 * reach through and the seed cannot. A brush behind takes the lint off.
 */
export const sawStand: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  const r = unit * 0.84;
  const saws = unit > 60 ? 3 : 2;
  const step: Point = [unit * 0.13, -unit * 0.1];
  const centre = (i: number): Point => [
    x - unit * 0.02 - step[0] * (i - (saws - 1)),
    y + unit * 0.06 - step[1] * (i - (saws - 1)),
  ];
  const marks: Mark[] = [slab(space), ...brush(`${name}/brush`, x + unit * 0.86, y - unit * 0.62, unit * 0.25)];
  for (let i = 0; i < saws; i++) {
    const [cx, cy] = centre(i);
    const front = i === saws - 1;
    marks.push(
      sawDisc(`${name}/saw${i}`, cx, cy, r, 30, front ? 'indigo' : i % 2 ? 'mid' : 'indigoWarm', front ? 6 : 2.6),
    );
    if (!front) marks.push(rib(`${name}/rib${i}`, cx - step[0] * 0.5, cy - step[1] * 0.5, r));
  }
  const [fx, fy] = centre(saws - 1);
  marks.push(stitchedRing(`${name}/ring1`, fx, fy, r * 0.78), stitchedRing(`${name}/ring2`, fx, fy, r * 0.64));
  marks.push(
    ...disc(`${name}/drum`, fx, fy, r * 0.5, 'madder', 2.6),
    ...disc(`${name}/arbor`, fx, fy, r * 0.24, 'weld'),
    ...disc(`${name}/shaft`, fx, fy, r * 0.09, 'iron', 0),
  );
  marks.push(rib(`${name}/ribFront`, fx - step[0] * 0.5, fy - step[1] * 0.5, r));
  return marks;
};

/** A rib: it hugs the saw on the feeding side, bows outwards where the teeth come through, and is held at both ends. */
function rib(name: string, x: number, y: number, r: number): Mark {
  const outer = arc(x - r * 0.12, y, r * 0.98, Math.PI * 0.74, Math.PI * 1.26, 9);
  const foot: Point = [outer[0]![0] + r * 0.2, outer[0]![1] + r * 0.28];
  const head: Point = [outer.at(-1)![0] + r * 0.22, outer.at(-1)![1] - r * 0.3];
  return patch(name, taperedStrip([foot, ...outer, head], r * 0.13, r * 0.1), 'weld', {
    shadow: 2.6,
    seam: 0,
    grain: null,
    scissors: { miss: 0.5 },
  });
}

function brush(name: string, x: number, y: number, r: number): Mark[] {
  const bristles = Math.max(14, Math.round(r * 0.9));
  return [
    {
      kind: 'stitches',
      stitches: Array.from({ length: bristles }, (_, i) => {
        const angle = (i / bristles) * 2 * Math.PI;
        return [
          x + r * 0.4 * Math.cos(angle),
          y + r * 0.4 * Math.sin(angle),
          x + r * Math.cos(angle),
          y + r * Math.sin(angle),
        ] as const;
      }),
      ink: 'walnut',
      width: Math.max(1.4, r * 0.06),
    },
    ...disc(`${name}/core`, x, y, r * 0.52, 'walnutWarm'),
    ...disc(`${name}/hub`, x, y, r * 0.18, 'weld', 0),
  ];
}

/** A roller stand: the hide roller draws the fibre under the fixed knife; the rotary knife beats the seed away. */
export const rollerStand: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  const cx = x + unit * 0.12;
  const cy = y + unit * 0.1;
  const r = unit * 0.8;
  const knife: Point[] = place(
    [
      [-0.98, -1.02],
      [-0.72, -1.06],
      [-0.52, -0.44],
      [-0.62, -0.4],
    ],
    { x: cx, y: cy, size: r * 1.3 },
  );
  const rotary = { x: cx - r * 1.22, y: cy - r * 0.14, r: r * 0.27 };
  const blades = [0, 1, 2, 3, 4, 5].map((i) =>
    place(
      [
        [-0.34, -0.3],
        [0.1, -1.2],
        [0.34, -0.3],
      ],
      { x: rotary.x, y: rotary.y, size: rotary.r, turn: (i / 6) * 2 * Math.PI },
    ),
  );
  return [
    slab(space),
    ...disc(`${name}/roller`, cx, cy, r, 'walnutWarm', 6),
    ...[0.82, 0.62, 0.42].map((share) => stitchedRing(`${name}/ply${share}`, cx, cy, r * share)),
    ...disc(`${name}/core`, cx, cy, r * 0.28, 'madder'),
    ...disc(`${name}/shaft`, cx, cy, r * 0.1, 'weld', 0),
    patch(`${name}/knife`, knife, 'ink', { shadow: 4, seam: 0, grain: null, scissors: { miss: 0.6 } }),
    ...blades.map((blade, i) =>
      patch(`${name}/blade${i}`, blade, i % 2 ? 'mid' : 'indigo', {
        shadow: 2.6,
        seam: 0,
        grain: null,
        scissors: { miss: 0.5 },
      }),
    ),
    ...disc(`${name}/rotaryHub`, rotary.x, rotary.y, rotary.r * 0.5, 'weld', 1.2),
  ];
};

/** A saw lint cleaner: one saw, and grid bars that knock the motes off it. */
export const sawLintCleaner: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  const r = Math.max(10, unit * 0.74);
  return [
    slab(space, 'fadedPale'),
    ...gridBars(`${name}/bars`, x, y, r * 1.12, Math.PI * 0.16, Math.PI * 0.84, 5, 'walnut'),
    sawDisc(`${name}/saw`, x, y, r, 18, 'mid'),
    ...disc(`${name}/drum`, x, y, r * 0.52, 'ink'),
    ...disc(`${name}/hub`, x, y, r * 0.18, 'weld', 0),
  ];
};

/** An air lint cleaner: the stream turns a sharp corner and the heavy bits fly out of it. */
export const airLintCleaner: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const duct: Point[] = [
    [x - 0.9 * unit, y - 0.4 * unit],
    [x, y + 0.5 * unit],
    [x + 0.9 * unit, y - 0.4 * unit],
  ];
  return [
    slab(space, 'fadedPale'),
    plate(`${space.name}/duct`, taperedStrip(duct, unit * 0.34, unit * 0.34), 'mid', 2.6, 0),
    bar(`${space.name}/slot`, x - unit * 0.16, y + unit * 0.52, unit * 0.32, unit * 0.14, 'iron', 0),
  ];
};

/** The press: plates close from above and below, six ties hold what they made. */
export const press: DrawMachine = (space) => {
  const { box, name } = space;
  const post = box.width * 0.1;
  const inner: MachineSpace['box'] = {
    x: box.x + post * 1.1,
    y: box.y + box.height * 0.3,
    width: box.width - post * 2.2,
    height: box.height * 0.42,
  };
  const plateOf = (id: string, y: number, flip: 1 | -1): Mark =>
    plate(
      `${name}/plate${id}`,
      [
        [box.x + post * 0.4, y],
        [box.x + box.width - post * 0.4, y - 3],
        [box.x + box.width - post * 1.4, y + flip * box.height * 0.14],
        [box.x + post * 1.4, y + flip * box.height * 0.14],
      ],
      'indigo',
      6,
      8,
    );
  const ties = Array.from({ length: 6 }, (_, i) => inner.x + (inner.width * (i + 0.5)) / 6 - inner.width * 0.014);
  return [
    bar(`${name}/postLeft`, box.x, box.y, post, box.height, 'iron', 4),
    bar(`${name}/postRight`, box.x + box.width - post, box.y, post, box.height, 'iron', 4),
    bar(
      `${name}/ram`,
      box.x + box.width * 0.4,
      box.y - box.height * 0.04,
      box.width * 0.2,
      box.height * 0.24,
      'weld',
      2.6,
    ),
    ...[0.16, 0.38, 0.62, 0.84].flatMap((share, i) =>
      [-1, 1].flatMap((side) =>
        pieceMarks('lint', `${name}/bulge${side}${i}`, {
          x: side < 0 ? inner.x + 2 : inner.x + inner.width - 2,
          y: inner.y + inner.height * share,
          size: inner.height * 0.15,
        }),
      ),
    ),
    plate(
      `${name}/bale`,
      [
        [inner.x, inner.y],
        [inner.x + inner.width, inner.y],
        [inner.x + inner.width, inner.y + inner.height],
        [inner.x, inner.y + inner.height],
      ],
      'lint',
      2.6,
      0,
    ),
    ...[0.25, 0.5, 0.75].map(
      (share, i): Mark => ({
        kind: 'stitches',
        stitches: runningStitches(
          [
            [inner.x + 6, inner.y + inner.height * share],
            [inner.x + inner.width - 6, inner.y + inner.height * share],
          ],
          `${name}/layer${i}`,
          { on: 12, off: 8, closed: false },
        ),
        ink: 'faded',
        width: 1.8,
      }),
    ),
    ...ties.map((tx, i) =>
      bar(`${name}/tie${i}`, tx, inner.y - 2, Math.max(3, inner.width * 0.028), inner.height + 4, 'madder', 1.2),
    ),
    plateOf('Top', box.y + box.height * 0.16, 1),
    plateOf('Bottom', box.y + box.height * 0.86, -1),
  ];
};

/** The classing table: a sample cut from both sides of the bale, its coupon, the tag that stays with the bale. */
export const classingTable: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const s = unit;
  const { name } = space;
  const at = (dx: number, dy: number): Point => [x + dx * s, y + dy * s];
  // Twelve knots for the twelve digits of the tag.
  const digits = Array.from({ length: 12 }, (_, i): Stitch => {
    const [kx, ky] = at(-0.46 + i * 0.078, 0.68);
    return [kx, ky, kx, ky];
  });
  return [
    plate(`${name}/board`, [at(-0.98, -0.8), at(0.98, -0.86), at(0.94, 0.94), at(-0.94, 0.96)], 'indigo', 6, 9),
    plate(`${name}/near`, [at(-0.78, -0.6), at(0.12, -0.66), at(0.16, -0.06), at(-0.74, 0.02)], 'lint', 4, 6),
    plate(`${name}/far`, [at(-0.08, -0.34), at(0.76, -0.44), at(0.82, 0.2), at(-0.02, 0.26)], 'muslin', 4, 6),
    ...[-0.5, -0.28, -0.06].flatMap((dx, i) =>
      pieceMarks('lint', `${name}/fibre${i}`, { x: x + dx * s, y: y - 0.32 * s, size: 0.1 * s }),
    ),
    plate(`${name}/tag`, [at(-0.6, 0.42), at(0.56, 0.38), at(0.6, 0.86), at(-0.58, 0.88)], 'weld', 2.6, 0),
    { kind: 'stitches', stitches: digits, ink: 'ink', width: Math.max(1.6, s * 0.045), flat: true },
    ...disc(`${name}/eyelet`, x + 0.48 * s, y + 0.5 * s, 0.045 * s, 'cotton', 0),
  ];
};
