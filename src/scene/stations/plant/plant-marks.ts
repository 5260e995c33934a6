import { patch } from '../../cloth/patch.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { type DisplayList, group, type Mark } from '../../display-list.ts';
import { fruitMarks } from './plant-fruit.ts';
import type { LaidNode } from './plant-layout.ts';
import { branchLeaf, mainLeaf, seedLeaves, tipLeaves } from './plant-leaves.ts';
import { type PlantLook, SIZES } from './plant-look.ts';
import { type SiteState, siteOn } from './plant-sample.ts';

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
    group('leaves', [...nodes.flatMap((laid) => mainLeaf(laid, look)), ...tipLeaves(nodes, look)]),
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
