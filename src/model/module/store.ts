import type { DecisionsOf } from '../decisions.ts';
import type { Fibre } from '../fibre.ts';
import { type MassLedger, massEntry, waterEntry } from '../ledger.ts';
import { type Lot, type PartMasses, parts, splitLot, totalKg, totalWaterKg, waterGroups } from '../lot.ts';
import { colourFacts, coverFacts, heatingFacts, storageFacts } from './facts.ts';
import { moduleCountFor } from './geometry.ts';
import { type ModuleVerdict, moduleVerdict, nextCoreF } from './heating.ts';
import { drifted, rainTakenUpKg, roomForWaterKg, soaked } from './wetting.ts';

export interface ModuleContext {
  /** Rain over the days in storage, inches. */
  readonly rainInchesInStorage: number;
}

export interface ModuleOutcome {
  readonly lot: Lot;
  readonly ledger: MassLedger;
  readonly moduleCount: number;
  /** Seed cotton in each as it goes to the gin, kg. */
  readonly seedCottonKgEach: number;
  /** The probe's reading at the core, day 0 on. */
  readonly coreTemperatureF: readonly { readonly day: number; readonly f: number }[];
  readonly verdict: ModuleVerdict;
  /** Relative rise of yellowness, 0.7 = +70 %. */
  readonly yellowing: number;
  /** Share of the cotton spoilt, 0 to 1. */
  readonly lostFraction: number;
  /** Moisture of the seed cotton that goes to the gin, % wet basis. */
  readonly moisturePercent: number;
}

const percentMoist = (lot: Pick<Lot, 'dryKg' | 'waterKg'>): number => {
  const all = totalKg(lot);
  return all > 0 ? (100 * totalWaterKg(lot.waterKg)) / all : 0;
};

/** Relative rise of yellowness for the points above the safe moisture, summed over the days. */
export function yellowingOf(pointDays: number): number {
  const limit = colourFacts.yellowingLimit.value;
  return limit * -Math.expm1((-colourFacts.yellowingPerPointDay.value * pointDays) / limit);
}

function storedFibre(fibre: Fibre, yellowing: number): Fibre {
  if (yellowing === 0) return fibre;
  return {
    ...fibre,
    yellownessB: fibre.yellownessB * (1 + yellowing),
    reflectanceRd: fibre.reflectanceRd - colourFacts.reflectanceLostPerYellowing.value * yellowing,
  };
}

/** Share spoilt: rot needs rain and also days, so that a wet wagon at the gin tomorrow loses little. */
function lostFractionOf(cover: keyof typeof coverFacts, rainInches: number, storageDays: number): number {
  const rotted = -Math.expm1(-storageDays / storageFacts.spoilingDays.value);
  return -Math.expm1(-coverFacts[cover].lostPerInch.value * rainInches * rotted);
}

/**
 * Stores the seed cotton in modules (or wagons) until the gin calls: rain comes through the cover, the cotton drifts to
 * the air's moisture, a damp core heats, a damp module yellows, and what rain has spoilt is thrown away.
 */
export function storeModules(lot: Lot, decisions: DecisionsOf<'module'>, context: ModuleContext): ModuleOutcome {
  const { kind, cover, storageDays } = decisions;
  const moduleCount = moduleCountFor(totalKg(lot), kind);
  // A module taken to the gin on the day it is built never stands in the rain.
  const rainInches = storageDays > 0 ? context.rainInchesInStorage : 0;
  const rainKgPerDay = storageDays > 0 ? (moduleCount * rainTakenUpKg(rainInches, kind, cover)) / storageDays : 0;

  let now: Pick<Lot, 'dryKg' | 'waterKg'> = lot;
  let takenUpKg = 0;
  let evaporatedKg = 0;
  let pointDays = 0;
  let coreF: number = heatingFacts.startF.value;
  const coreTemperatureF = [{ day: 0, f: coreF }];
  const steps = storageFacts.stepsPerDay.value;
  for (let step = 1; step <= storageDays * steps; step++) {
    const rainKg = Math.min(rainKgPerDay / steps, roomForWaterKg(now));
    const wet = { dryKg: now.dryKg, waterKg: soaked(now, rainKg) };
    const next = { dryKg: now.dryKg, waterKg: drifted(wet, 1 / steps) };
    takenUpKg += rainKg;
    for (const group of waterGroups) {
      const change = next.waterKg[group] - wet.waterKg[group];
      if (change > 0) takenUpKg += change;
      else evaporatedKg -= change;
    }
    // What a step's moisture brings about goes by its middle, so that rain counts from when it falls.
    const moist = (percentMoist(now) + percentMoist(next)) / 2;
    now = next;
    pointDays += Math.max(0, moist - colourFacts.yellowsAbovePercent.value) / steps;
    coreF = nextCoreF(coreF, moist, 1 / steps);
    if (step % steps === 0) coreTemperatureF.push({ day: step / steps, f: coreF });
  }

  const lostFraction = lostFractionOf(cover, rainInches, storageDays);
  const spoilt = splitLot(now, Object.fromEntries(parts.map((part) => [part, lostFraction])) as PartMasses);
  const yellowing = yellowingOf(pointDays);
  const stored: Lot = { ...spoilt.kept, fibre: storedFibre(lot.fibre, yellowing) };
  const hottestF = coreTemperatureF.reduce((hottest, { f }) => Math.max(hottest, f), 0);
  return {
    lot: stored,
    ledger: {
      station: 'module',
      in: [massEntry('lot', lot), waterEntry('moistureTakenUp', takenUpKg)],
      out: [massEntry('moduleLoss', spoilt.removed), waterEntry('evaporated', evaporatedKg), massEntry('lot', stored)],
    },
    moduleCount,
    seedCottonKgEach: totalKg(stored) / moduleCount,
    coreTemperatureF,
    verdict: moduleVerdict(hottestF - heatingFacts.startF.value, hottestF),
    yellowing,
    lostFraction,
    moisturePercent: percentMoist(stored),
  };
}
