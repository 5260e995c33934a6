import { openBollMarks } from '../../cloth/boll.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { arc, place, ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point } from '../../display-list.ts';
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

/** A picking sack, dragged by its strap, and one open boll. */
export const handSack: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const s = unit;
  const strap: Point[] = [
    [x - 0.5 * s, y - 0.66 * s],
    [x - 0.2 * s, y - 1.02 * s],
    [x + 0.3 * s, y - 1.04 * s],
    [x + 0.5 * s, y - 0.62 * s],
  ];
  return [
    plate(
      `${space.name}/sack`,
      [
        [x - 0.62 * s, y - 0.7 * s],
        [x + 0.6 * s, y - 0.64 * s],
        [x + 0.82 * s, y + 0.5 * s],
        [x + 0.56 * s, y + 0.98 * s],
        [x - 0.5 * s, y + 0.96 * s],
        [x - 0.78 * s, y + 0.46 * s],
      ],
      'walnutPale',
      6,
      9,
    ),
    plate(
      `${space.name}/mouth`,
      [
        [x - 0.64 * s, y - 0.72 * s],
        [x + 0.62 * s, y - 0.66 * s],
        [x + 0.56 * s, y - 0.44 * s],
        [x - 0.6 * s, y - 0.48 * s],
      ],
      'walnut',
      2.6,
      5,
    ),
    plate(`${space.name}/strap`, taperedStrip(strap, s * 0.15, s * 0.15), 'madder', 2.6, 0),
    ...[
      [-0.34, -0.74, 0.2],
      [0, -0.8, 0.24],
      [0.34, -0.72, 0.2],
    ].flatMap(([dx, dy, r], i) =>
      pieceMarks('lint', `${space.name}/heap${i}`, { x: x + dx! * s, y: y + dy! * s, size: r! * s }),
    ),
    ...openBollMarks(`${space.name}/boll`, { x: x + 0.04 * s, y: y + 0.26 * s, size: 0.42 * s, wide: 1, turn: 0.1 }, 5),
  ];
};

/** A drum of barbed spindles, and the doffers that unwind them. */
export const spindlePicker: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const marks: Mark[] = [slab(space)];
  const drum: Point = [x - 0.1 * unit, y + 0.06 * unit];
  for (let i = 0; i < 12; i++) {
    const turn = (i / 12) * 2 * Math.PI;
    const spindle = place(
      [
        [-0.075, -0.5],
        [0.075, -0.5],
        [0.05, -0.84],
        [-0.05, -0.84],
      ],
      { x: drum[0], y: drum[1], size: unit, turn },
    );
    marks.push(plate(`${space.name}/spindle${i}`, spindle, i % 2 ? 'walnutPale' : 'muslin', 1.2, 0));
    const barbs = place(
      [
        [-0.07, -0.6],
        [0.07, -0.65],
        [-0.06, -0.72],
        [0.06, -0.77],
      ],
      { x: drum[0], y: drum[1], size: unit, turn },
    );
    marks.push({
      kind: 'stitches',
      stitches: [
        [...barbs[0]!, ...barbs[1]!],
        [...barbs[2]!, ...barbs[3]!],
      ],
      ink: 'ink',
      width: Math.max(1, unit * 0.016),
    });
  }
  marks.push(
    ...disc(`${space.name}/drum`, drum[0], drum[1], 0.6 * unit, 'indigo', 4),
    stitchedRing(`${space.name}/ring`, drum[0], drum[1], 0.34 * unit),
    ...disc(`${space.name}/hub`, drum[0], drum[1], 0.15 * unit, 'madder'),
  );
  // Doffers: a stack of rubber discs beside the drum.
  for (let i = 0; i < 3; i++)
    marks.push(
      ...disc(
        `${space.name}/doffer${i}`,
        x + 0.82 * unit,
        y + (-0.5 + i * 0.5) * unit,
        0.17 * unit,
        i % 2 ? 'spentMadder' : 'madder',
      ),
    );
  return marks;
};

/** Two rolls with bats and brushes by turns, that strip the whole stalk. */
export const stripperRolls: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const marks: Mark[] = [slab(space)];
  const stalk: Point[] = [
    [x, y + 0.98 * unit],
    [x - 0.03 * unit, y + 0.3 * unit],
    [x + 0.04 * unit, y - 0.4 * unit],
    [x, y - 0.92 * unit],
  ];
  marks.push(plate(`${space.name}/stalk`, taperedStrip(stalk, unit * 0.09, unit * 0.05), 'walnut', 1.2, 0));
  for (const side of [-1, 1]) {
    const cx = x + side * 0.46 * unit;
    for (let i = 0; i < 6; i++) {
      const fin = place(
        [
          [-0.09, -0.26],
          [0.09, -0.26],
          [0.07, -0.46],
          [-0.07, -0.46],
        ],
        { x: cx, y, size: unit, turn: (i / 6) * 2 * Math.PI + (side > 0 ? 0.3 : 0) },
      );
      marks.push(plate(`${space.name}/fin${side}${i}`, fin, i % 2 ? 'walnutPale' : 'iron', 1.2, 0));
    }
    marks.push(
      ...disc(`${space.name}/roll${side}`, cx, y, 0.31 * unit, 'indigo'),
      stitchedRing(`${space.name}/ring${side}`, cx, y, 0.12 * unit, 'faded'),
    );
  }
  marks.push(
    ...openBollMarks(`${space.name}/bolls`, { x, y: y - 0.7 * unit, size: 0.24 * unit, wide: 1, turn: 0.2 }, 4),
  );
  return marks;
};

/** The field cleaner on the stripper: a saw that slings burs off. */
export const fieldCleaner: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  return [
    slab(space),
    sawDisc(`${space.name}/saw`, x, y, 0.74 * unit, 16, 'mid'),
    ...disc(`${space.name}/hub`, x, y, 0.28 * unit, 'ink'),
  ];
};

/** A round module end on: the cotton wound, the wrap about it, its tail. */
export const roundModule: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const winding = arc(x, y, 1, 0, 5 * 2 * Math.PI, 150).map(([px, py], i): Point => {
    const reach = unit * 0.66 * (1 - i / 156);
    return [x + (px - x) * reach, y + (py - y) * reach];
  });
  return [
    ...disc(`${space.name}/wrap`, x, y, unit * 0.98, 'weld', 6),
    plate(
      `${space.name}/tail`,
      [
        [x + 0.52 * unit, y - 0.9 * unit],
        [x + 0.86 * unit, y - 0.62 * unit],
        [x + 0.98 * unit, y - 0.1 * unit],
        [x + 0.8 * unit, y - 0.08 * unit],
        [x + 0.66 * unit, y - 0.5 * unit],
      ],
      'weldPale',
      2.6,
      0,
    ),
    ...disc(`${space.name}/lint`, x, y, unit * 0.78, 'lint', 2.6),
    {
      kind: 'stitches',
      stitches: runningStitches(winding, `${space.name}/winding`, { on: 12, off: 8, closed: false }),
      ink: 'mid',
      width: Math.max(1.4, unit * 0.018),
    },
  ];
};

/** A long module under its cover, tied down. */
export const conventionalModule: DrawMachine = (space) => {
  const { box, name } = space;
  const { unit } = middleOf(space);
  const left = box.x + box.width * 0.03;
  const right = box.x + box.width * 0.97;
  const base = box.y + box.height * 0.88;
  const top = box.y + box.height * 0.16;
  const ropes = [0.28, 0.5, 0.72].map((share) => left + (right - left) * share);
  return [
    plate(
      `${name}/body`,
      [
        [left + unit * 0.12, top + unit * 0.3],
        [right - unit * 0.12, top + unit * 0.28],
        [right, base],
        [left, base],
      ],
      'lint',
      6,
      8,
    ),
    ...[0.5, 0.64, 0.78].map(
      (share, i): Mark => ({
        kind: 'stitches',
        stitches: runningStitches(
          [
            [left + 14, box.y + box.height * share],
            [right - 14, box.y + box.height * share + 2],
          ],
          `${name}/pack${i}`,
          { on: 14, off: 9, closed: false },
        ),
        ink: 'faded',
        width: 1.8,
      }),
    ),
    plate(
      `${name}/cover`,
      [
        [left + unit * 0.02, top + unit * 0.5],
        [left + unit * 0.14, top + unit * 0.16],
        [left + (right - left) * 0.5, top],
        [right - unit * 0.14, top + unit * 0.14],
        [right - unit * 0.02, top + unit * 0.48],
        [left + (right - left) * 0.5, top + unit * 0.42],
      ],
      'indigo',
      4,
      7,
    ),
    ...ropes.map((rx, i) =>
      bar(`${name}/rope${i}`, rx - 2, top + unit * 0.06, 4, base - top - unit * 0.06, 'madder', 1.2),
    ),
    bar(`${name}/ground`, box.x, base, box.width, box.height * 0.07, 'walnut'),
  ];
};

/** A wagon: boards, two wheels, a heap of seed cotton. */
export const wagon: DrawMachine = (space) => {
  const { x, y, unit } = middleOf(space);
  const marks: Mark[] = [];
  for (let i = 0; i < 9; i++)
    marks.push(
      ...pieceMarks('lint', `${space.name}/heap${i}`, {
        x: x + (-0.72 + 0.18 * i) * unit,
        y: y - (0.34 + 0.16 * Math.sin((i / 8) * Math.PI)) * unit,
        size: 0.19 * unit,
      }),
    );
  marks.push(
    plate(
      `${space.name}/box`,
      [
        [x - 0.98 * unit, y - 0.3 * unit],
        [x + 0.98 * unit, y - 0.34 * unit],
        [x + 0.86 * unit, y + 0.44 * unit],
        [x - 0.86 * unit, y + 0.46 * unit],
      ],
      'madder',
      6,
      8,
    ),
  );
  for (const share of [-0.05, 0.2])
    marks.push({
      kind: 'stitches',
      stitches: runningStitches(
        [
          [x - 0.86 * unit, y + share * unit],
          [x + 0.86 * unit, y + (share - 0.02) * unit],
        ],
        `${space.name}/board${share}`,
        { closed: false, on: 12, off: 7 },
      ),
      ink: 'thread',
      width: 1.8,
    });
  for (const side of [-0.56, 0.56]) {
    const cy = y + 0.6 * unit;
    marks.push(...disc(`${space.name}/wheel${side}`, x + side * unit, cy, 0.36 * unit, 'walnut', 4));
    marks.push({
      kind: 'stitches',
      stitches: ring(x + side * unit, cy, 0.26 * unit, 8).map(([px, py]) => [x + side * unit, cy, px, py] as const),
      ink: 'walnutPale',
      width: Math.max(2, unit * 0.03),
    });
    marks.push(...disc(`${space.name}/hub${side}`, x + side * unit, cy, 0.08 * unit, 'weld', 1.2));
  }
  return marks;
};

/** The module feeder: a bed of rollers and a bank of spiked cylinders that takes the module apart. */
export const moduleFeeder: DrawMachine = (space) => {
  const { box, name } = space;
  const radius = Math.min(box.width * 0.42, box.height * 0.15);
  return [
    slab(space),
    ...[0.2, 0.5, 0.8].flatMap((share, i) =>
      spikedCylinder(`${name}/cylinder${i}`, box.x + box.width / 2, box.y + box.height * share, radius),
    ),
  ];
};
