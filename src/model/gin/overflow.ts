import { addMasses, type PartMasses, parts, splitLot, type WaterGroup, waterGroupOf, waterGroups } from '../lot.ts';
import type { Masses } from './machine-step.ts';

/** The flows around the distributor for one lot, kg: more is distributed than was fed, since the surplus comes round again. */
export interface OverflowFlows {
  /** What the conveyor carries over the stands: feed and return together. */
  readonly distributed: Masses;
  /** What falls into the overflow hopper. */
  readonly overflow: Masses;
  /** What the separator takes out on the way back. */
  readonly removed: Masses;
  /** What comes back to the conveyor. */
  readonly returned: Masses;
  /** What the feeders take. */
  readonly toFeeders: Masses;
}

/** Share of a part's feed that the separator takes in all its rounds. */
export const removedInAllRounds = (share: number, removedFraction: number): number =>
  (share * removedFraction) / (1 - share * (1 - removedFraction));

/**
 * The distributor in steady state, in closed form. For each part with new feed N, overflow share q and separator removal
 * r: distributed D = N / (1 - q (1 - r)), overflow q D, removed q D r, returned q D (1 - r), to the feeders (1 - q) D.
 * So feeders + removed = N and D = N + returned. Water follows its dry mass.
 * @param share q, 0 to less than 1
 */
export function distribute(feed: Masses, share: number, removedFraction: Partial<PartMasses>): OverflowFlows {
  const roundsRemoved = {} as Record<keyof PartMasses, number>;
  const gain = {} as Record<keyof PartMasses, number>;
  for (const part of parts) {
    const r = removedFraction[part] ?? 0;
    roundsRemoved[part] = removedInAllRounds(share, r);
    gain[part] = 1 / (1 - share * (1 - r));
  }
  const { kept: toFeeders, removed } = splitLot(feed, roundsRemoved);
  const distributed = multiplied(feed, gain);
  const overflow = multiplied(distributed, Object.fromEntries(parts.map((part) => [part, share])) as PartMasses);
  const returned = splitLot(overflow, removedFraction).kept;
  return { distributed: addMasses(feed, returned), overflow, removed, returned, toFeeders };
}

/** Each part times its own factor; every part of a group is equally damp, so the water goes by dry mass. */
function multiplied(masses: Masses, factor: PartMasses): Masses {
  const dryKg = {} as Record<keyof PartMasses, number>;
  const before: Record<WaterGroup, number> = { lint: 0, seed: 0, trash: 0 };
  const after: Record<WaterGroup, number> = { lint: 0, seed: 0, trash: 0 };
  for (const part of parts) {
    dryKg[part] = masses.dryKg[part] * factor[part];
    before[waterGroupOf(part)] += masses.dryKg[part];
    after[waterGroupOf(part)] += dryKg[part];
  }
  const waterKg = {} as Record<WaterGroup, number>;
  for (const group of waterGroups)
    waterKg[group] = before[group] > 0 ? (masses.waterKg[group] * after[group]) / before[group] : 0;
  return { dryKg, waterKg };
}
