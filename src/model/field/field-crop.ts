import { type Lot, partMasses, waterForMoisture } from '../lot.ts';
import { KILO } from '../units.ts';
import { cropFibre } from './crop-fibre.ts';
import { pickingFacts } from './facts.ts';
import type { FieldCrop } from './field-season.ts';
import type { Growing } from './growing.ts';
import type { PickedCohort } from './picked-cotton.ts';
import { leafRemaining, weatherLoss } from './weathering.ts';
import { lintFromBolls } from './yield-estimate.ts';

/** The lot of a field from air-dry lint and seed, kg. */
function grownLot(lintKg: number, seedKg: number, fibre: Lot['fibre']): Lot {
  const share = (percent: { readonly value: number }) => percent.value / 100;
  const { lintMoisturePercent, seedMoisturePercent, trashMoisturePercent, motesPercent } = pickingFacts;
  const lint = lintKg * (1 - share(lintMoisturePercent));
  const seed = seedKg * (1 - share(seedMoisturePercent));
  const motes = (lintKg + seedKg) * share(motesPercent) * (1 - share(trashMoisturePercent));
  return {
    dryKg: partMasses({ lint, seed, motes }),
    waterKg: {
      lint: waterForMoisture(lint, share(lintMoisturePercent)),
      seed: waterForMoisture(seed, share(seedMoisturePercent)),
      trash: waterForMoisture(motes, share(trashMoisturePercent)),
    },
    fibre,
  };
}

/** The crop of a field that was picked. */
export function fieldCrop(growing: Growing, cohorts: readonly PickedCohort[], openPercentAtHarvest: number): FieldCrop {
  const { variety, plan, plantsPerAcre, pickDays, aidDay, frostDay } = growing;
  let bolls = 0;
  let lintG = 0;
  let seedG = 0;
  let lost = 0;
  let rain = 0;
  let daysOpen = 0;
  for (const cohort of cohorts) {
    bolls += cohort.bolls;
    lintG += cohort.lintG;
    seedG += cohort.seedG;
    lost += cohort.lintG * weatherLoss(cohort.rainInches);
    rain += cohort.lintG * cohort.rainInches;
    daysOpen += cohort.lintG * (cohort.pickDay - cohort.openDay);
  }
  const kgPerGram = (plantsPerAcre * plan.acres) / KILO;
  const first = pickDays[0]!;
  return {
    grown: grownLot(lintG * kgPerGram, seedG * kgPerGram, cropFibre(cohorts, variety)),
    weatheredFraction: lost / lintG,
    openPercentAtHarvest,
    leafRemaining: leafRemaining(daysSince(aidDay, first), daysSince(frostDay, first)),
    rainAfterOpeningInches: rain / lintG,
    daysOpenMean: daysOpen / lintG,
    lintLbPerAcre: lintFromBolls(plantsPerAcre, bolls, lintG / bolls),
  };
}

/** Days from an event to the picking; null when it did not come before it. */
const daysSince = (event: number, picked: number): number | null =>
  event >= 0 && event <= picked ? picked - event : null;
