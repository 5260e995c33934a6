import { groupDryKg, type PartMasses, totalDryKg, type WaterMasses, waterForMoisture } from '../lot.ts';
import { harvestFacts } from './facts.ts';

/**
 * The water of seed cotton of a known moisture, shared among lint, seed and trash as the same air would share it: seed and
 * trash hold more than lint.
 * @param moisturePercent of the whole seed cotton, % wet basis
 * @returns water by group, kg
 */
export function seedCottonWaterKg(dryKg: PartMasses, moisturePercent: number): WaterMasses {
  const lint = groupDryKg(dryKg, 'lint');
  const seed = groupDryKg(dryKg, 'seed') * harvestFacts.seedRegainRatio.value;
  const trash = groupDryKg(dryKg, 'trash') * harvestFacts.trashRegainRatio.value;
  const weight = lint + seed + trash;
  const lintRegain = weight > 0 ? waterForMoisture(totalDryKg(dryKg), moisturePercent / 100) / weight : 0;
  return { lint: lint * lintRegain, seed: seed * lintRegain, trash: trash * lintRegain };
}
