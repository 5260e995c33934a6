import { cutBollMarks, greenBollMarks, openBollMarks } from '../../cloth/boll.ts';
import { chanceOf, spread } from '../../cloth/chance.ts';
import { type CottonKind, flowerMarks, squareMarks } from '../../cloth/flower.ts';
import { leafMarks } from '../../cloth/leaf.ts';
import { patch } from '../../cloth/patch.ts';
import { seedLeafShape } from '../../cloth/piece-shapes.ts';
import { place } from '../../cloth/point.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import type { LaidNode, LaidSite } from './plant-layout.ts';
import { type SiteState, siteOn } from './plant-sample.ts';

/** Sizes on the page, inches from the middle to the edge. Fruit is drawn a fifth over size, so that it can be counted. */
const SIZES = {
  mainLeaf: 2.7,
  branchLeaf: 1.9,
  square: 1.05,
  flower: 2.1,
  greenBoll: 1.35,
  openBoll: 1.95,
  /** A boll is full size about three weeks after the flower (memory: UGA Bulletin 1252). */
  bollDays: 21,
  squareDays: 21,
  seedLeavesUntilNode: 9,
  /** Joints at the top that are still green. */
  greenNodes: 7,
} as const;

export interface PlantLook {
  readonly dayOfYear: number;
  readonly pxPerInch: number;
  readonly kind: CottonKind;
  /** Share of the leaves still on the plant, 0 to 1. */
  readonly leafShare: number;
  readonly foot: Point;
}

/** Draws a plant that has been laid out: leaves behind, stem and branches, then fruit, each kind in a group with its count. */
export function plantMarks(nodes: readonly LaidNode[], look: PlantLook): DisplayList {
  const counts = { square: 0, flower: 0, greenBoll: 0, openBoll: 0, shed: 0, notYet: 0 };
  const fruit: Record<SiteState['kind'], Mark[]> = {
    notYet: [],
    square: [],
    flower: [],
    greenBoll: [],
    openBoll: [],
    shed: [],
  };
  for (const { node, sites } of nodes)
    for (const laid of sites) {
      const state = siteOn(laid.site, look.dayOfYear);
      counts[state.kind]++;
      fruit[state.kind].push(...fruitMarks(`fruit/${node.number}/${laid.site.position}`, laid, state, node.side, look));
    }
  return [
    group('seedLeaves', seedLeaves(nodes, look)),
    group(
      'leaves',
      nodes.flatMap((laid) => mainLeaf(laid, look)),
    ),
    group('stem', [...branchMarks(nodes, look), ...stemMarks(nodes, look)]),
    group(
      'branchLeaves',
      nodes.flatMap((laid) => laid.sites.flatMap((site) => branchLeaf(laid, site, look))),
    ),
    group('shed', fruit.shed, counts.shed),
    group('squares', fruit.square, counts.square),
    group('greenBolls', fruit.greenBoll, counts.greenBoll),
    group('openBolls', fruit.openBoll, counts.openBoll),
    group('flowers', fruit.flower, counts.flower),
  ];
}

const stays = (name: string, look: PlantLook): boolean => chanceOf(`${name}/stays`)() < look.leafShare;

function mainLeaf({ node, at, leaf }: LaidNode, look: PlantLook): Mark[] {
  const name = `leaf/${node.number}`;
  if (!stays(name, look)) return [];
  const chance = chanceOf(name);
  const outwards = node.side;
  const lift = (node.branch === 'fruiting' ? 0.62 : 0.3) + spread(chance, 0.4);
  const reach = look.pxPerInch * leaf * (3.5 + spread(chance, 1.1));
  const joint: Point = [at[0] + outwards * Math.cos(lift) * reach, at[1] - Math.sin(lift) * reach];
  const size =
    SIZES.mainLeaf *
    look.pxPerInch *
    (0.25 + 0.75 * leaf) *
    Math.min(1, 0.5 + 0.07 * node.number) *
    (0.92 + 0.16 * chance());
  return [
    petiole(name, at, joint, Math.max(1.4, look.pxPerInch * 0.14)),
    ...leafMarks(
      name,
      { x: joint[0], y: joint[1], size, wide: 1, turn: outwards * (1.02 - 0.3 * lift) + spread(chance, 0.2) },
      ['bollGreen', 'leafGreen'],
      node.number < 4,
    ),
  ];
}

function branchLeaf({ node }: LaidNode, { site, at, leaf }: LaidSite, look: PlantLook): Mark[] {
  const name = `leaf/${node.number}/${site.position}`;
  if (!stays(name, look)) return [];
  const chance = chanceOf(name);
  const lift = Math.PI / 2 - node.side * (0.1 + spread(chance, 0.4));
  const reach = look.pxPerInch * leaf * 1.15;
  const joint: Point = [at[0] + Math.cos(lift) * reach, at[1] - Math.sin(lift) * reach];
  const size = SIZES.branchLeaf * look.pxPerInch * (0.2 + 0.8 * leaf) * (0.9 + 0.2 * chance());
  return [
    petiole(name, at, joint, Math.max(1.2, look.pxPerInch * 0.12)),
    ...leafMarks(name, { x: joint[0], y: joint[1], size, wide: 1, turn: node.side * 0.5 + spread(chance, 0.35) }, [
      'bollGreen',
      'leafGreen',
    ]),
  ];
}

/** The pair of seed leaves, opposite each other below the first node; they have dropped by the time the plant blooms. */
function seedLeaves(nodes: readonly LaidNode[], look: PlantLook): Mark[] {
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

/** The stem: woody below, green where it is still growing. */
function stemMarks(nodes: readonly LaidNode[], look: PlantLook): Mark[] {
  const top = Math.max(2, look.pxPerInch * 0.13);
  const bottom = Math.max(3, look.pxPerInch * (0.14 + 0.032 * nodes.length));
  const path = [look.foot, ...nodes.map((node) => node.at)];
  const green = Math.max(0, path.length - SIZES.greenNodes);
  const widthAt = (i: number) => bottom + ((top - bottom) * i) / Math.max(1, path.length - 1);
  const strip = (name: string, from: number, to: number, ink: 'walnut' | 'leafGreen'): Mark[] =>
    to - from < 1
      ? []
      : [
          patch(name, taperedStrip(path.slice(from, to + 1), widthAt(from), widthAt(to)), ink, {
            shadow: 1.2,
            seam: 0,
            grain: null,
            scissors: { miss: 0.3 },
          }),
        ];
  return [...strip('stem', 0, green, 'walnut'), ...strip('stem/young', green, path.length - 1, 'leafGreen')];
}

const branchMarks = (nodes: readonly LaidNode[], look: PlantLook): Mark[] =>
  nodes
    .filter((laid) => laid.branch.length > 1)
    .map((laid) =>
      patch(
        `branch/${laid.node.number}`,
        taperedStrip(laid.branch, Math.max(2.4, look.pxPerInch * 0.26), Math.max(1.6, look.pxPerInch * 0.16)),
        'walnutWarm',
        { shadow: 1.2, seam: 0, grain: null, scissors: { miss: 0.3 } },
      ),
    );

function fruitMarks(name: string, { site, at }: LaidSite, state: SiteState, side: -1 | 1, look: PlantLook): Mark[] {
  const unit = look.pxPerInch;
  const chance = chanceOf(name);
  const [x, y] = at;
  switch (state.kind) {
    case 'notYet':
      return [];
    case 'square': {
      const size = SIZES.square * unit * (0.45 + 0.55 * Math.min(1, state.ageDays / SIZES.squareDays));
      return [...squareMarks(name, { x, y: y + size * 0.1, size, wide: 1, turn: side * 0.35 + spread(chance, 0.2) })];
    }
    case 'flower':
      return [
        ...flowerMarks(
          name,
          { x, y, size: SIZES.flower * unit, wide: 1, turn: spread(chance, 0.6) },
          look.kind,
          state.ageDays,
        ),
      ];
    case 'greenBoll': {
      const size = SIZES.greenBoll * unit * (0.4 + 0.6 * Math.min(1, state.ageDays / SIZES.bollDays));
      return [...greenBollMarks(name, { x, y: y + size * 0.9, size, wide: 1, turn: spread(chance, 0.25) })];
    }
    case 'openBoll': {
      const size = SIZES.openBoll * unit * Math.min(1, 0.75 + 0.12 * state.ageDays);
      return [...openBollMarks(name, { x, y: y + size * 0.5, size, wide: 1, turn: spread(chance, 0.6) }, site.locks)];
    }
    case 'shed': {
      const reach = Math.max(3.2, unit * 0.36);
      return [
        {
          kind: 'stitches',
          stitches: [
            [x - reach, y - reach, x + reach, y + reach],
            [x - reach, y + reach, x + reach, y - reach],
          ],
          ink: 'madder',
          width: Math.max(1.6, unit * 0.16),
        },
      ];
    }
  }
}

/** The oldest boll that is still green, cut open. */
export function cutBollOf(nodes: readonly LaidNode[], dayOfYear: number): LaidSite | null {
  let oldest: LaidSite | null = null;
  for (const { sites } of nodes)
    for (const laid of sites) {
      if (siteOn(laid.site, dayOfYear).kind !== 'greenBoll') continue;
      if (oldest === null || laid.site.flowerDay! < oldest.site.flowerDay!) oldest = laid;
    }
  return oldest;
}

export const insetBoll = (laid: LaidSite, at: Point, size: number): Mark =>
  group(
    'seedsInBoll',
    cutBollMarks('inset', { x: at[0], y: at[1], size, wide: 1, turn: 0 }, laid.site.locks, laid.site.seeds),
    laid.site.seeds,
  );
