import { retentionFacts } from './facts.ts';
import { vegetativePosition } from './fruit-calendar.ts';
import type { FruitingPosition } from './varieties.ts';

/** Share of young bolls kept at a load of fruit (set lint over what the field can carry). Crop Science 13:168 (1973), fitted. */
export const loadKept = (load: number): number =>
  1 / (1 + Math.exp((load - retentionFacts.loadAtHalf.value) / retentionFacts.loadWidth.value));

/** Share kept through heat: warm nights and very hot days cost bolls. */
export function heatKept(maxF: number, minF: number): number {
  const { warmNightF, warmNightSlope, hotDayF, hotDaySlope, leastHeatKept } = retentionFacts;
  const lost =
    warmNightSlope.value * Math.max(0, minF - warmNightF.value) + hotDaySlope.value * Math.max(0, maxF - hotDayF.value);
  return Math.max(leastHeatKept.value, 1 - lost);
}

/** Share kept through drought. */
export const waterKept = (supply: number): number =>
  retentionFacts.dryKept.value + (1 - retentionFacts.dryKept.value) * supply;

/**
 * The positions of a stand: thin stands fill their outer positions and their vegetative branches.
 * @param positions as the variety has them at the reference stand
 */
export function positionsAtStand(
  positions: readonly FruitingPosition[],
  plantsPerAcre: number,
): readonly FruitingPosition[] {
  const thinness = retentionFacts.referencePlantsPerAcre.value / plantsPerAcre;
  const outer = thinness ** retentionFacts.outerThinningPower.value;
  const vegetative = thinness ** retentionFacts.vegetativeThinningPower.value;
  return positions.map((position, index) => {
    if (index === 0) return position;
    if (index === vegetativePosition) {
      return { ...position, sites: Math.min(retentionFacts.mostVegetativeSites.value, position.sites * vegetative) };
    }
    return { ...position, flowersKept: Math.min(retentionFacts.mostOuterKept.value, position.flowersKept * outer) };
  });
}

/** Share of a day's flowers at a position that stay as bolls. */
export const flowersKept = (position: FruitingPosition, load: number, supply: number, heat: number): number =>
  Math.min(retentionFacts.mostKept.value, position.flowersKept * loadKept(load) * waterKept(supply) * heat);
