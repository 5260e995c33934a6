import {
  groupDryKg,
  type Lot,
  totalDryKg,
  totalWaterKg,
  type WaterGroup,
  type WaterMasses,
  waterForMoisture,
  waterGroups,
} from '../lot.ts';
import { INCHES_PER_FOOT, METRES_PER_FOOT } from '../units.ts';
import { coverFacts, type ModuleCover, type ModuleKind, moduleFacts, storageFacts } from './facts.ts';

/** Cubic metres of water that an inch of rain puts on a square foot, exact. */
const cubicMetresPerInchSquareFoot = METRES_PER_FOOT ** 2 * (METRES_PER_FOOT / INCHES_PER_FOOT);

/** Rain that stays in the cotton of one module, kg. */
export const rainTakenUpKg = (rainInches: number, kind: ModuleKind, cover: ModuleCover): number =>
  rainInches *
  moduleFacts[kind].topSquareFeet.value *
  cubicMetresPerInchSquareFoot *
  storageFacts.waterKgPerCubicMetre.value *
  coverFacts[cover].rainSoaksIn.value;

/** Room for more water before the cotton drains, kg. */
export const roomForWaterKg = (lot: Pick<Lot, 'dryKg' | 'waterKg'>): number =>
  Math.max(
    0,
    waterForMoisture(totalDryKg(lot.dryKg), storageFacts.wettestPercent.value / 100) - totalWaterKg(lot.waterKg),
  );

/** Adds water to every group in proportion to its dry mass. */
export function soaked({ dryKg, waterKg }: Pick<Lot, 'dryKg' | 'waterKg'>, addedKg: number): WaterMasses {
  const dry = totalDryKg(dryKg);
  const next = {} as Record<WaterGroup, number>;
  for (const group of waterGroups)
    next[group] = waterKg[group] + (dry > 0 ? (addedKg * groupDryKg(dryKg, group)) / dry : 0);
  return next;
}

const restingRegain: Record<WaterGroup, number> = {
  lint: storageFacts.restingLintRegain.value,
  seed: storageFacts.restingSeedRegain.value,
  trash: storageFacts.restingTrashRegain.value,
};

/** The drift of each group in a day, or part of one, toward what the outside air would leave in it. */
export function drifted({ dryKg, waterKg }: Pick<Lot, 'dryKg' | 'waterKg'>, days = 1): WaterMasses {
  const next = {} as Record<WaterGroup, number>;
  const share = 1 - (1 - storageFacts.driftPerDay.value) ** days;
  for (const group of waterGroups) {
    const resting = groupDryKg(dryKg, group) * restingRegain[group];
    next[group] = waterKg[group] + (resting - waterKg[group]) * share;
  }
  return next;
}
