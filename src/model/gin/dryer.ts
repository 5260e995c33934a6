import type { Fibre } from '../fibre.ts';
import { breakByLength } from '../length/breakage.ts';
import { groupDryKg, moistureFraction, type WaterGroup, waterForMoisture, waterGroups } from '../lot.ts';
import { heatedHumidity, lintRegain, wetBasisFromRegain } from './air.ts';
import { dryingFacts as facts } from './facts.ts';
import { type MachineStep, type Masses, waterOnly } from './machine-step.ts';

/** The air outside, which the dryer heats. */
export interface OutsideAir {
  readonly outsideF: number;
  /** Relative humidity, 0 to 1. */
  readonly outsideHumidity: number;
}

/**
 * First-order drying: moisture after a time, same unit as the start and the end point.
 * @param equilibrium where it would end
 */
export const dryingMoisture = (start: number, equilibrium: number, ratePerSecond: number, seconds: number): number =>
  equilibrium + (start - equilibrium) * Math.exp(-ratePerSecond * seconds);

/** Drying rate of lint in a dryer, per second, for the temperature of the air that enters it. */
export const dryingRatePerSecond = (airF: number): number =>
  facts.ratePerSecond.value * Math.exp(facts.ratePerF.value * (airF - facts.rateReferenceF.value));

/** Moisture that lint would end at in the dryer's air, wet-basis fraction. */
export function dryerEquilibrium(airF: number, { outsideF, outsideHumidity }: OutsideAir): number {
  const meanF = outsideF + facts.meanRiseShare.value * Math.max(0, airF - outsideF);
  return wetBasisFromRegain(lintRegain(heatedHumidity(outsideF, outsideHumidity, meanF)));
}

const dryingShare: Record<WaterGroup, number> = {
  lint: 1,
  seed: facts.seedDryingShare.value,
  trash: facts.trashDryingShare.value,
};

/** Breakage from overheated air, breaks per mm of a 25 mm fibre; none up to 200 F. */
export function heatBreakagePerMm(airF: number): number {
  const over = Math.max(0, airF - facts.harmlessF.value) / (facts.hottestF.value - facts.harmlessF.value);
  return facts.breakagePerMmAtHottest.value * over * over;
}

/**
 * One pass through a dryer. It only takes water away: in air damper than the cotton nothing happens.
 * @param machine name of the step
 */
export function dry(machine: string, before: Masses, fibre: Fibre, airF: number, outside: OutsideAir): MachineStep {
  const equilibrium = dryerEquilibrium(airF, outside);
  const waterKg = {} as Record<WaterGroup, number>;
  const evaporated = {} as Record<WaterGroup, number>;
  for (const group of waterGroups) {
    const start = moistureFraction(before, group);
    const end = dryingMoisture(start, equilibrium, dryingRatePerSecond(airF), facts.exposureSeconds.value);
    const reached = start + dryingShare[group] * Math.min(0, end - start);
    const left = waterForMoisture(groupDryKg(before.dryKg, group), reached);
    // Rounding must not make a dryer add water.
    waterKg[group] = reached < start ? Math.min(before.waterKg[group], left) : before.waterKg[group];
    evaporated[group] = before.waterKg[group] - waterKg[group];
  }
  const theta = heatBreakagePerMm(airF) * fibre.breakTendency;
  return {
    machine,
    in: before,
    added: [],
    removed: [{ account: 'evaporated', masses: waterOnly(evaporated) }],
    out: { dryKg: before.dryKg, waterKg },
    fibreBefore: fibre,
    fibreAfter: theta > 0 ? { ...fibre, lengths: breakByLength(fibre.lengths, theta) } : fibre,
  };
}
