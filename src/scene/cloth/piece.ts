import type { DisplayList, Point, Stitch } from '../display-list.ts';
import { chanceOf, spread } from './chance.ts';
import { cutEdge } from './cut-edge.ts';
import { partCloth, type Shown } from './part-cloth.ts';
import { patch } from './patch.ts';
import {
  burShape,
  dirtChips,
  dropShape,
  finishShape,
  leafShape,
  leafVeins,
  moteHairs,
  moteShape,
  seedShape,
  sizeShape,
  stickShape,
} from './piece-shapes.ts';
import { type Placing, place } from './point.ts';
import { tuftOutline } from './tuft.ts';

/** Above this radius a piece has room for stitches. */
const ROOM_TO_SEW_PX = 13;

/**
 * One counted piece, drawn around the origin of its placing. Its shape alone says what it is, down to 7 px from middle to edge.
 * @param placing x, y, size (px from the middle to the edge) and turn
 */
export function pieceMarks(part: Shown, name: string, placing: Required<Pick<Placing, 'x' | 'y' | 'size'>> & Placing) {
  const draw = painters[part];
  return draw(name, placing);
}

type Draw = (name: string, placing: Required<Pick<Placing, 'x' | 'y' | 'size'>> & Placing) => DisplayList;

/** A cut shape in its part's cloth, without a seam. */
const cutShape =
  (part: Shown, shape: readonly Point[]): Draw =>
  (name, placing) => {
    const miss = placing.size * 0.03;
    const outline = cutEdge(place(shape, placing), name, { miss, snip: 40, bow: 0.02 });
    return [patch(name, outline, partCloth[part].fill, { shadow: 1.2, seam: 0, scissors: 'asDrawn', grain: null })];
  };

const line = (from: Point, to: Point): Stitch => [from[0], from[1], to[0], to[1]];
const pathStitches = (path: readonly Point[]): Stitch[] => path.slice(1).map((to, i) => line(path[i]!, to));

/** A tuft on the white lint band would vanish: it is laid on a slip of indigo cloth that shows all round. */
const tuft: Draw = (name, { x, y, size }) => {
  const chance = chanceOf(`${name}/lint`);
  const edge = Math.max(1.1, size * 0.09);
  const outer = tuftOutline(x, y, size, name);
  const inner = outer.map(([px, py]): Point => {
    const reach = Math.hypot(px - x, py - y);
    return [x + ((px - x) * (reach - edge)) / reach, y + ((py - y) * (reach - edge)) / reach];
  });
  const fibres: Stitch[] = Array.from({ length: size > ROOM_TO_SEW_PX ? 9 : 5 }, (_, i) => {
    const angle = (i / (size > ROOM_TO_SEW_PX ? 9 : 5)) * 2 * Math.PI + spread(chance, 0.3);
    const from = size * (0.16 + 0.14 * chance());
    const to = from + size * 0.26;
    const lean = angle + spread(chance, 0.24);
    return [x + Math.cos(angle) * from, y + Math.sin(angle) * from, x + Math.cos(lean) * to, y + Math.sin(lean) * to];
  });
  return [
    patch(name, outer, 'mid', { shadow: 1.2, seam: 0, scissors: 'asDrawn', grain: null }),
    patch(`${name}/top`, inner, 'lint', { shadow: 0, seam: 0, scissors: 'asDrawn', grain: null }),
    { kind: 'stitches', stitches: fibres, ink: 'faded', width: Math.max(0.9, size * 0.055), flat: true },
  ];
};

const seed: Draw = (name, placing) => {
  const dots = place(
    [
      [0.02, -0.44],
      [0.22, 0.02],
      [-0.22, 0.08],
      [0.02, 0.5],
    ],
    placing,
  );
  // Seed lies on a slip of pale cloth, the fuzz it keeps after ginning, so that it shows on the walnut band.
  const fuzz = place(seedShape, { ...placing, size: placing.size * 1.2 });
  return [
    patch(`${name}/fuzz`, fuzz, 'muslin', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: placing.size * 0.05 },
    }),
    patch(name, place(seedShape, placing), 'iron', {
      shadow: 0,
      seam: 0,
      grain: null,
      scissors: { miss: placing.size * 0.03 },
    }),
    {
      kind: 'stitches',
      stitches: dots.map((dot) => line(dot, dot)),
      ink: 'thread',
      width: Math.max(1.2, placing.size * 0.17),
      flat: true,
    },
  ];
};

const leaf: Draw = (name, placing) => {
  const [notch, ...ends] = place([[0, 0.42], ...leafVeins.map(([x, y]): Point => [x * 0.82, y * 0.82])], placing);
  return [
    ...cutShape('leaf', leafShape)(name, placing),
    {
      kind: 'stitches',
      stitches: ends.map((end) => line(notch!, end)),
      ink: 'thread',
      width: Math.max(0.8, placing.size * 0.07),
      flat: true,
    },
  ];
};

const bur: Draw = (name, placing) => {
  const rib = place(
    [
      [-0.1, 0.62],
      [-0.32, 0.1],
      [-0.3, -0.34],
      [-0.04, -0.7],
    ],
    placing,
  );
  return [
    ...cutShape('burs', burShape)(name, placing),
    {
      kind: 'stitches',
      stitches: pathStitches(rib),
      ink: 'thread',
      width: Math.max(0.8, placing.size * 0.07),
      flat: true,
    },
  ];
};

const mote: Draw = (name, placing) => [
  {
    kind: 'stitches',
    stitches: moteHairs.flatMap((hair) => pathStitches(place(hair, placing))),
    ink: 'spentMadder',
    width: Math.max(1.1, placing.size * 0.12),
    flat: true,
  },
  ...cutShape('motes', moteShape)(name, placing),
];

const dirt: Draw = (name, placing) => dirtChips.flatMap((chip, i) => cutShape('dirt', chip)(`${name}/${i}`, placing));

const drop: Draw = (name, placing) => {
  const ripple = place(
    Array.from({ length: 9 }, (_, i): Point => [-0.4 + i * 0.1, 0.3 + 0.14 * Math.sin((i / 8) * 2 * Math.PI)]),
    { ...placing, turn: 0 },
  );
  return [
    ...cutShape('water', dropShape)(name, placing),
    {
      kind: 'stitches',
      stitches: pathStitches(ripple),
      ink: 'thread',
      width: Math.max(0.9, placing.size * 0.1),
      flat: true,
    },
  ];
};

const painters: Readonly<Record<Shown, Draw>> = {
  lint: tuft,
  seed,
  burs: bur,
  sticks: cutShape('sticks', stickShape),
  leaf,
  motes: mote,
  dirt,
  size: cutShape('size', sizeShape),
  finish: cutShape('finish', finishShape),
  water: drop,
};
