import { chanceOf, spread } from '../../cloth/chance.ts';
import type { Point } from '../../display-list.ts';
import type { DrawnNode, DrawnPlant, DrawnSite } from './plant-sample.ts';

/** Drawing measures, inches and days. They place organs on the page; they are no part of the model. */
const MEASURES = {
  /** An internode reaches its length over about this many days. */
  internodeDays: 9,
  leafDays: 14,
  branchDays: 24,
  /** Length of a branch from the stem to its first site, then from site to site. */
  siteSteps: [7, 5.6, 4.6],
  /** Sites on a vegetative branch stand closer, as a share of that. */
  vegetativeShare: 0.5,
  kinkInches: 0.22,
} as const;

export interface LaidSite {
  readonly site: DrawnSite;
  readonly at: Point;
  /** Share of full size its leaf has reached, 0 to 1. */
  readonly leaf: number;
}
export interface LaidNode {
  readonly node: DrawnNode;
  readonly at: Point;
  readonly leaf: number;
  /** The branch from the stem outwards; empty when there is none yet. */
  readonly branch: readonly Point[];
  readonly sites: readonly LaidSite[];
}

export interface LayoutOptions {
  readonly dayOfYear: number;
  /** Stem height on this day, inches. */
  readonly heightInches: number;
  readonly foot: Point;
  readonly pxPerInch: number;
  /** Branches drawn shorter by this share, where the picture is narrow. */
  readonly widthShare?: number;
}

/** Places every node, branch and site of a plant on the page: true height, alternate sides, a kink at each node. */
export function layPlant(plant: DrawnPlant, options: LayoutOptions): LaidNode[] {
  const { dayOfYear, heightInches, foot, pxPerInch, widthShare = 1 } = options;
  const grown = plant.nodes.filter((node) => node.appearsDay <= dayOfYear);
  const weights = grown.map((node, i) => {
    const vigour = Math.min(1, 0.55 + 0.09 * i);
    return vigour * grownShare(dayOfYear - node.appearsDay + 2, MEASURES.internodeDays);
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0) || 1;
  let risen = 0;
  return grown.map((node, i): LaidNode => {
    risen += (weights[i]! / total) * heightInches * pxPerInch;
    const lean = spread(chanceOf(`node/${node.number}`), 0.12);
    const at: Point = [foot[0] + (node.side * MEASURES.kinkInches + lean) * pxPerInch, foot[1] - risen];
    const leaf = grownShare(dayOfYear - node.appearsDay + 1.5, MEASURES.leafDays);
    const { branch, sites } = layBranch(node, at, dayOfYear, pxPerInch, widthShare);
    return { node, at, leaf, branch, sites };
  });
}

function layBranch(node: DrawnNode, from: Point, dayOfYear: number, pxPerInch: number, widthShare: number) {
  const shown = node.sites.filter((site) => site.squareDay <= dayOfYear);
  const branch: Point[] = [];
  const sites: LaidSite[] = [];
  let at = from;
  shown.forEach((site, i) => {
    const chance = chanceOf(`site/${node.number}/${site.position}`);
    const grown = grownShare(dayOfYear - site.squareDay + 3, MEASURES.branchDays);
    const step = MEASURES.siteSteps[site.position - 1]! * (node.branch === 'vegetative' ? MEASURES.vegetativeShare : 1);
    const length = step * grown * pxPerInch;
    // A fruiting branch zigzags: it bends at each site, up and then level, and young ones stand steeper.
    const rise =
      (i % 2 ? 0.12 : 0.42) + 0.35 * (1 - grown) + spread(chance, 0.06) + (node.branch === 'vegetative' ? 0.4 : 0);
    if (branch.length === 0) branch.push(from);
    at = [at[0] + node.side * Math.cos(rise) * length * widthShare, at[1] - Math.sin(rise) * length];
    branch.push(at);
    sites.push({ site, at, leaf: grownShare(dayOfYear - site.squareDay, MEASURES.leafDays) });
  });
  return { branch, sites };
}

/** Share of full size after some days: quick at first, then slower. */
const grownShare = (days: number, scaleDays: number): number => 1 - Math.exp(-Math.max(0, days) / scaleDays);
