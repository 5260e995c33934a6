import type { InkName } from '../../style/inks.ts';
import type { DisplayList, Mark, Point, Stitch } from '../display-list.ts';
import { openBollMarks } from './boll.ts';
import { chanceOf, spread } from './chance.ts';
import { cutEdge } from './cut-edge.ts';
import { partCloth, type Shown } from './part-cloth.ts';
import { patch } from './patch.ts';
import {
  burShape,
  dirtChips,
  dropShape,
  finishShape,
  hankShape,
  hankTurns,
  leafShape,
  leafVeins,
  moteHairs,
  moteShape,
  seedShape,
  sizeShape,
  snipRows,
  snipShape,
  stickShape,
} from './piece-shapes.ts';
import { type Placing, place } from './point.ts';
import { tuftOutline } from './tuft.ts';

/** Above this radius a piece has room for stitches. */
const ROOM_TO_SEW_PX = 13;

/** How many different cuts a part's pieces have. */
export const PIECE_CUTS = 6;

/**
 * A piece of one of its part's few cuts, so that a painter may draw each cut once and use it many times.
 * @param cut 0 to 5
 */
export function cutPiece(part: Shown, cut: number, form: LintForm, x: number, y: number, size: number): DisplayList {
  const name = `piece/${part}/${cut}`;
  const turn = part === 'water' ? 0 : spread(chanceOf(`${name}/turn`), part === 'lint' ? 0.9 : Math.PI);
  return pieceMarks(part, name, { x, y, size, turn }, form);
}

/** What the lint is: still in its boll, loose, spun, woven or knitted. */
export type LintForm = 'boll' | 'tuft' | 'yarn' | 'cloth';

/**
 * One counted piece, drawn around the origin of its placing. Its shape alone says what it is, down to 7 px from middle to edge.
 * @param placing x, y, size (px from the middle to the edge) and turn
 */
export function pieceMarks(part: Shown, name: string, placing: PiecePlacing, form: LintForm = 'tuft'): DisplayList {
  if (part === 'lint') return lintForms[form](name, placing);
  return painters[part](name, placing);
}

type PiecePlacing = Required<Pick<Placing, 'x' | 'y' | 'size'>> & Placing;
type Draw = (name: string, placing: PiecePlacing) => DisplayList;

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

/** A dark slip shows all round a pale piece, or it would vanish on a pale ground. */
function onSlip(
  name: string,
  outline: readonly Point[],
  { x, y, size }: { x: number; y: number; size: number },
  slip: InkName = 'mid',
  top: InkName = 'lint',
): Mark[] {
  const edge = Math.max(1.1, size * 0.09);
  const inner = outline.map(([px, py]): Point => {
    const reach = Math.hypot(px - x, py - y) || 1;
    const kept = Math.max(0.2, (reach - edge) / reach);
    return [x + (px - x) * kept, y + (py - y) * kept];
  });
  return [
    patch(name, outline, slip, { shadow: 1.2, seam: 0, scissors: 'asDrawn', grain: null }),
    patch(`${name}/top`, inner, top, { shadow: 0, seam: 0, scissors: 'asDrawn', grain: null }),
  ];
}

/** A tuft. Its fibres are drawn as loose curls, never as rays: rays would make a flower of it. */
const tuft: Draw = (name, { x, y, size }) => {
  const chance = chanceOf(`${name}/lint`);
  const count = size > ROOM_TO_SEW_PX ? 6 : 3;
  const fibres: Stitch[] = Array.from({ length: count }, (_, i) => {
    const around = (i / count) * 2 * Math.PI + spread(chance, 0.5);
    const [cx, cy] = [x + Math.cos(around) * size * 0.36, y + Math.sin(around) * size * 0.34];
    const heading = around + Math.PI / 2 + spread(chance, 0.7);
    const half = size * (0.13 + 0.07 * chance());
    const bend = size * 0.1;
    const [dx, dy] = [Math.cos(heading) * half, Math.sin(heading) * half];
    const [mx, my] = [cx + Math.cos(around) * bend, cy + Math.sin(around) * bend];
    return [[cx - dx, cy - dy, mx, my] as const, [mx, my, cx + dx, cy + dy] as const];
  }).flat();
  return [
    ...onSlip(name, tuftOutline(x, y, size, name), { x, y, size }),
    { kind: 'stitches', stitches: fibres, ink: 'faded', width: Math.max(0.9, size * 0.06), flat: true },
  ];
};

/** A hank of yarn: twisted once in the middle. */
const hank: Draw = (name, placing) => {
  const outline = place(hankShape, placing);
  const turns = place(hankTurns.flat(), placing);
  return [
    ...onSlip(name, outline, placing),
    {
      kind: 'stitches',
      stitches: hankTurns.map((_, i) => line(turns[i * 2]!, turns[i * 2 + 1]!)),
      ink: 'mid',
      width: Math.max(0.9, placing.size * 0.07),
      flat: true,
    },
  ];
};

/** A snip of cloth, woven or knitted. */
const snip: Draw = (name, placing) => {
  const weave = place(snipRows.flat(), placing);
  return [
    ...onSlip(name, place(snipShape, placing), placing),
    {
      kind: 'stitches',
      stitches: snipRows.map((_, i) => line(weave[i * 2]!, weave[i * 2 + 1]!)),
      ink: 'mid',
      width: Math.max(0.9, placing.size * 0.08),
      flat: true,
    },
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

/** Five locks in their burs, as the boll stands open on the plant. */
const boll: Draw = (name, { x, y, size, turn = 0 }) =>
  openBollMarks(name, { x, y, size: size * 0.92, turn, wide: 1 }, 5);

const lintForms: Readonly<Record<LintForm, Draw>> = { boll, tuft, yarn: hank, cloth: snip };

const painters: Readonly<Record<Exclude<Shown, 'lint'>, Draw>> = {
  seed,
  burs: bur,
  sticks: cutShape('sticks', stickShape),
  leaf,
  motes: mote,
  dirt,
  size: (name, placing) => onSlip(name, place(sizeShape, placing), placing, 'walnut', 'weld'),
  finish: (name, placing) => onSlip(name, place(finishShape, placing), placing, 'mid', 'faded'),
  water: drop,
};
