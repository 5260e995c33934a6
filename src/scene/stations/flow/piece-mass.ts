import { trashParts } from '../../../model/lot.ts';
import type { Shown } from '../../cloth/part-cloth.ts';
import { type FlowLegend, type Masses, shownKg } from './flow-input.ts';

/** How many pieces a scene has room for: tufts and seeds on one band, and bits of one kind of trash. */
export interface PieceRoom {
  readonly mostTufts: number;
  readonly mostBits: number;
}
/** About this many can be told apart on a band. */
const ordinaryRoom: PieceRoom = { mostTufts: 64, mostBits: 22 };
/** Quilting rows on the widest band. */
const MOST_ROWS = 14;

/** What comes in and goes out of a scene; pieces stand for round numbers of one pound or one kilogram, kg. */
interface Flow {
  readonly inflow: readonly Masses[];
  readonly outflow: readonly Masses[];
  readonly unitKg: number;
}

/** What pieces stand for in a scene: the smallest of 1, 2, 5, 10, 20, 50... units that keeps them countable. */
export function legendOf(flow: Flow, { mostTufts, mostBits }: PieceRoom = ordinaryRoom): FlowLegend {
  const all = [...flow.inflow, ...flow.outflow];
  const most = (value: (masses: Masses) => number) => Math.max(0, ...all.map(value));
  const tufts = most((masses) => masses.dryKg.lint + masses.dryKg.seed + masses.waterKg);
  const bits = most((masses) =>
    Math.max(...[...trashParts, 'size' as const, 'finish' as const].map((part) => masses.dryKg[part])),
  );
  const tuftKg = roundMass(tufts / mostTufts, flow.unitKg);
  return {
    tuftKg,
    bitKg: Math.min(tuftKg, roundMass(bits / mostBits, flow.unitKg)),
    rowKg: roundMass(tufts / MOST_ROWS, flow.unitKg),
  };
}

/** The smallest round number of units, 1, 2 or 5 times a power of ten, that is no less than a mass. */
export function roundMass(leastKg: number, unitKg: number): number {
  if (!(leastKg > 0)) return unitKg;
  const units = leastKg / unitKg;
  const power = 10 ** Math.floor(Math.log10(units));
  const step = [1, 2, 5, 10].find((nice) => nice * power >= units * (1 - 1e-9)) ?? 10;
  return step * power * unitKg;
}

export const pieceKg = (part: Shown, { tuftKg, bitKg }: FlowLegend): number =>
  part === 'lint' || part === 'seed' || part === 'water' ? tuftKg : bitKg;

/** How many pieces show a mass: rounded half up. */
export const pieceCount = (masses: Masses, part: Shown, legend: FlowLegend): number =>
  Math.floor(shownKg(masses, part) / pieceKg(part, legend) + 0.5 + 1e-9);
