import { type PartMasses, type TrashPart, trashParts } from '../lot.ts';
import { cleaningFacts as facts } from './facts.ts';

/** What changes a machine's removal from its table. */
export interface RemovalConditions {
  /** Moisture of the lint in the machine, % wet basis. */
  readonly lintMoisturePercent: number;
  /** How well leaf comes away, 1 for picked cotton. */
  readonly leafFactor: number;
  readonly loadingBalesPerHourFoot: number;
}

/** Drier cotton gives up its trash more easily: factor on every trash fraction. */
export function cleaningMoistureFactor(lintMoisturePercent: number): number {
  const factor = 1 - facts.moistureSlope.value * (lintMoisturePercent - facts.moistureReferencePercent.value);
  return Math.min(facts.mostMoistureFactor.value, Math.max(facts.leastMoistureFactor.value, factor));
}

/** Removal fractions of a seed-cotton machine under its conditions. */
export function removalUnder(table: Partial<PartMasses>, conditions: RemovalConditions): Partial<PartMasses> {
  const over = Math.max(0, conditions.loadingBalesPerHourFoot - facts.fullLoading.value);
  const cleaning =
    cleaningMoistureFactor(conditions.lintMoisturePercent) * Math.max(0, 1 - facts.removalLostPerLoading.value * over);
  const losing = 1 + facts.cottonLostPerLoading.value * over;
  const removed: Partial<Record<keyof PartMasses, number>> = {
    lint: (table.lint ?? 0) * losing,
    seed: (table.seed ?? 0) * losing,
  };
  const leafFactor: Partial<Record<TrashPart, number>> = { leaf: conditions.leafFactor };
  for (const part of trashParts) {
    const fraction = (table[part] ?? 0) * cleaning * (leafFactor[part] ?? 1);
    removed[part] = Math.min(facts.mostRemoved.value, fraction);
  }
  return removed;
}
