import { patch } from '../../cloth/patch.ts';
import { arc, place, ring } from '../../cloth/point.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Point, Stitch } from '../../display-list.ts';
import {
  bar,
  type DrawMachine,
  disc,
  middleOf,
  plate,
  sawDisc,
  slab,
  spikedCylinder,
  stitchedRing,
} from './machine-parts.ts';

/** The opening line: beaters pluck the bale apart. */
export const opener: DrawMachine = (space) => {
  const { box, name } = space;
  const radius = Math.min(box.width * 0.4, box.height * 0.17);
  return [
    slab(space),
    ...[0.28, 0.7].flatMap((share, i) =>
      spikedCylinder(
        `${name}/beater${i}`,
        box.x + box.width / 2,
        box.y + box.height * share,
        radius,
        i ? 'mid' : 'indigo',
      ),
    ),
  ];
};

/** A card: one great cylinder under a chain of flats, a taker-in before it and a doffer after. */
export const card: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  const r = unit * 0.78;
  const flats = arc(x, y, r * 1.14, Math.PI * 1.14, Math.PI * 1.86, 10);
  return [
    slab(space),
    ...flats.map((at, i) =>
      patch(
        `${name}/flat${i}`,
        ring(at[0], at[1], r * 0.12, 4, Math.PI * 1.14 + (i / 10) * Math.PI * 0.72 + Math.PI / 4),
        i % 2 ? 'weld' : 'weldPale',
        { shadow: 1.2, seam: 0, grain: null, scissors: { miss: 0.5 } },
      ),
    ),
    sawDisc(`${name}/wire`, x, y, r, 60, 'indigo', 6),
    stitchedRing(`${name}/ring1`, x, y, r * 0.82),
    stitchedRing(`${name}/ring2`, x, y, r * 0.6, 'faded'),
    ...disc(`${name}/drum`, x, y, r * 0.42, 'madder'),
    ...disc(`${name}/hub`, x, y, r * 0.14, 'weld', 0),
    sawDisc(`${name}/taker`, x - r * 1.12, y + r * 0.5, r * 0.3, 18, 'mid'),
    sawDisc(`${name}/doffer`, x + r * 1.1, y + r * 0.42, r * 0.38, 26, 'mid'),
  ];
};

/** A comber: needles on half the wheel; the jaws hold a fringe while the short fibre is combed out of it. */
export const comber: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  const r = unit * 0.6;
  const cy = y + r * 0.34;
  const needles: Stitch[] = arc(x, cy, 1, -Math.PI * 0.9, Math.PI * 0.16, 28).map(([px, py]) => [
    x + (px - x) * r * 0.9,
    cy + (py - cy) * r * 0.9,
    x + (px - x) * r * 1.18,
    cy + (py - cy) * r * 1.18,
  ]);
  const fringe: Stitch[] = Array.from({ length: 9 }, (_, i) => {
    const top = y - r * (1.02 + 0.022 * i);
    return [x - r * 0.3, top, x + r * (0.34 - 0.03 * i), cy - r * (1.02 - 0.02 * i)];
  });
  return [
    slab(space),
    { kind: 'stitches', stitches: needles, ink: 'ink', width: Math.max(1.2, unit * 0.018) },
    ...disc(`${name}/wheel`, x, cy, r, 'indigo', 4),
    ...disc(`${name}/drum`, x, cy, r * 0.5, 'mid'),
    ...disc(`${name}/hub`, x, cy, r * 0.18, 'weld', 0),
    { kind: 'stitches', stitches: fringe, ink: 'lint', width: Math.max(1.4, unit * 0.022) },
    plate(
      `${name}/jawTop`,
      place(
        [
          [-1.3, -1.72],
          [-0.5, -1.62],
          [-0.14, -1.24],
          [-0.3, -1.16],
          [-1.3, -1.34],
        ],
        { x, y, size: r },
      ),
      'madder',
      4,
      0,
    ),
    plate(
      `${name}/jawBottom`,
      place(
        [
          [-1.3, -1.2],
          [-0.32, -1.08],
          [-0.16, -0.98],
          [-0.52, -0.82],
          [-1.3, -0.88],
        ],
        { x, y, size: r },
      ),
      'spentMadder',
      4,
      0,
    ),
  ];
};

/** A spindle: the cop of yarn, the ring, the traveller that twists. */
export const spindle: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  const s = unit;
  const cop: Point[] = [
    [-0.12, -0.78],
    [0.12, -0.78],
    [0.16, -0.4],
    [0.44, 0.26],
    [0.4, 0.66],
    [-0.4, 0.66],
    [-0.44, 0.26],
    [-0.16, -0.4],
  ];
  const winds: Stitch[] = Array.from({ length: 15 }, (_, i) => {
    const y0 = -0.3 + i * 0.064;
    const half = y0 < 0.26 ? 0.17 + ((y0 + 0.4) / 0.66) * 0.24 : 0.4;
    return [x - half * s, y + y0 * s, x + half * s, y + (y0 - 0.05) * s];
  });
  const yarn: Point[] = [
    [x + 0.42 * s, y + 0.04 * s],
    [x + 0.1 * s, y - 0.86 * s],
    [x - 0.1 * s, y - 1 * s],
  ];
  return [
    slab(space, 'fadedPale'),
    bar(`${name}/rail`, x - 0.8 * s, y + 0.66 * s, 1.6 * s, 0.16 * s, 'indigo', 4),
    plate(
      `${name}/spindle`,
      place(
        [
          [-0.05, -0.98],
          [0.05, -0.98],
          [0.07, 0.96],
          [-0.07, 0.96],
        ],
        { x, y, size: s },
      ),
      'iron',
      2.6,
      0,
    ),
    plate(`${name}/cop`, place(cop, { x, y, size: s }), 'lint', 6, 0),
    { kind: 'stitches', stitches: winds, ink: 'mid', width: Math.max(1.2, s * 0.018) },
    plate(
      `${name}/ring`,
      taperedStrip(
        arc(x, y + 0.04 * s, 0.56 * s, Math.PI * 0.06, Math.PI * 0.94, 10).map(
          ([px, py]): Point => [px, y + 0.04 * s + (py - y - 0.04 * s) * 0.3],
        ),
        s * 0.07,
        s * 0.07,
      ),
      'weld',
      2.6,
      0,
    ),
    {
      kind: 'stitches',
      stitches: [
        [...yarn[0]!, ...yarn[1]!],
        [...yarn[1]!, ...yarn[2]!],
      ],
      ink: 'indigo',
      width: Math.max(1.4, s * 0.02),
    },
    ...disc(`${name}/traveller`, x + 0.5 * s, y + 0.12 * s, 0.06 * s, 'madder', 1.2),
  ];
};

/** A rotor: fibre falls on the wall of a spinning cup and is drawn off as yarn. */
export const rotor: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const { name } = space;
  return [
    slab(space),
    ...disc(`${name}/cup`, x, y, unit * 0.72, 'indigo', 6),
    ...disc(`${name}/groove`, x, y, unit * 0.5, 'lint', 0),
    stitchedRing(`${name}/fibre`, x, y, unit * 0.44, 'mid'),
    ...disc(`${name}/navel`, x, y, unit * 0.2, 'madder'),
    ...disc(`${name}/hole`, x, y, unit * 0.07, 'iron', 0),
  ];
};
