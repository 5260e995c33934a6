import { chanceOf, spread } from '../../cloth/chance.ts';
import { cutOnce } from '../../cloth/cut-once.ts';
import { type LeafCloth, leafMarks } from '../../cloth/leaf.ts';
import { patch } from '../../cloth/patch.ts';
import { seedLeafShape } from '../../cloth/piece-shapes.ts';
import { place } from '../../cloth/point.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { LaidNode, LaidSite } from './plant-layout.ts';
import { type PlantLook, SIZES } from './plant-look.ts';

const LEAF_CLOTH: LeafCloth = ['bollGreen', 'leafGreen'];

const stays = (name: string, look: PlantLook): boolean => chanceOf(`${name}/stays`)() < look.leafShare;

/** The leaf of a main-stem node, on its long stalk. */
export function mainLeaf({ node, at, leaf }: LaidNode, look: PlantLook): Mark[] {
  const name = `leaf/${node.number}`;
  if (!stays(name, look)) return [];
  const chance = chanceOf(name);
  const outwards = node.side;
  const lift = (node.branch === 'fruiting' ? 0.62 : 0.3) + spread(chance, 0.4);
  const reach = look.pxPerInch * leaf * (3.1 + spread(chance, 1.5));
  const joint: Point = [at[0] + outwards * Math.cos(lift) * reach, at[1] - Math.sin(lift) * reach];
  const size =
    SIZES.mainLeaf *
    look.pxPerInch *
    (0.25 + 0.75 * leaf) *
    Math.min(1, 0.5 + 0.07 * node.number) *
    (0.92 + 0.16 * chance());
  return [
    petiole(name, at, joint, Math.max(1.4, look.pxPerInch * 0.14)),
    ...cutOnce(
      name,
      { x: joint[0], y: joint[1], size, wide: 1, turn: outwards * (1.02 - 0.3 * lift) + spread(chance, 0.2) },
      (placing) => leafMarks(name, placing, LEAF_CLOTH, node.number < 4),
    ),
  ];
}

/** The leaf of a fruiting site. */
export function branchLeaf({ node }: LaidNode, { site, at, leaf }: LaidSite, look: PlantLook): Mark[] {
  const name = `leaf/${node.number}/${site.position}`;
  if (!stays(name, look)) return [];
  const chance = chanceOf(name);
  const lift = Math.PI / 2 - node.side * (0.1 + spread(chance, 0.4));
  const reach = look.pxPerInch * leaf * 1.15;
  const joint: Point = [at[0] + Math.cos(lift) * reach, at[1] - Math.sin(lift) * reach];
  const size = SIZES.branchLeaf * look.pxPerInch * (0.2 + 0.8 * leaf) * (0.9 + 0.2 * chance());
  return [
    petiole(name, at, joint, Math.max(1.2, look.pxPerInch * 0.12)),
    ...cutOnce(
      name,
      { x: joint[0], y: joint[1], size, wide: 1, turn: node.side * 0.5 + spread(chance, 0.35) },
      (placing) => leafMarks(name, placing, LEAF_CLOTH),
    ),
  ];
}

/** The leaves that are unfolding at the tip. */
export function tipLeaves(nodes: readonly LaidNode[], look: PlantLook): Mark[] {
  const top = nodes.at(-1);
  if (!top || !stays('leaf/tip', look)) return [];
  const size = Math.min(SIZES.tipLeaf, 0.5 + 0.06 * nodes.length) * look.pxPerInch;
  return [-1, 1].flatMap((side) =>
    cutOnce(
      `leaf/tip${side}`,
      {
        x: top.at[0] + side * size * 0.1,
        y: top.at[1],
        size: size * (side === top.node.side ? 1 : 0.8),
        wide: 0.8,
        turn: side * 0.6,
      },
      (placing) => leafMarks(`leaf/tip${side}`, placing, ['leafGreen', 'youngGreen'], true),
    ),
  );
}

/** The pair of seed leaves, opposite each other below the first node; they have dropped by the time the plant blooms. */
export function seedLeaves(nodes: readonly LaidNode[], look: PlantLook): Mark[] {
  if (nodes.length >= SIZES.seedLeavesUntilNode) return [];
  const top = nodes[0]?.at ?? [look.foot[0], look.foot[1] - 1.6 * look.pxPerInch];
  const joint: Point = [(look.foot[0] + top[0]) / 2, look.foot[1] + (top[1] - look.foot[1]) * 0.62];
  return [-1, 1].flatMap((side): Mark[] => {
    const tip: Point = [joint[0] + side * 0.62 * look.pxPerInch, joint[1] - 0.3 * look.pxPerInch];
    const outline = place(
      seedLeafShape.map(([x, y]): Point => [x, y - 0.24]),
      { x: tip[0], y: tip[1], size: look.pxPerInch * 0.95, wide: 0.62, turn: side * 1.2 },
    );
    return [
      petiole(`seedLeaf${side}`, joint, tip, Math.max(1.4, look.pxPerInch * 0.1)),
      patch(`seedLeaf${side}`, outline, 'leafGreen', {
        shadow: 2.6,
        seam: look.pxPerInch > 20 ? 5 : 0,
        thread: 'youngGreen',
        grain: null,
        scissors: { miss: 0.6 },
      }),
    ];
  });
}

const petiole = (name: string, from: Point, to: Point, width: number): Mark =>
  patch(`${name}/petiole`, taperedStrip([from, to], width * 1.2, width * 0.8), 'leafGreen', {
    shadow: 0,
    seam: 0,
    grain: null,
    scissors: 'asDrawn',
  });
