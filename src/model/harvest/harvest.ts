import type { DecisionsOf } from '../decisions.ts';
import type { Fibre } from '../fibre.ts';
import { type MassLedger, massEntry, waterEntry } from '../ledger.ts';
import { breakByLength } from '../length/breakage.ts';
import { machineBreakagePerMm } from '../length/facts.ts';
import {
  addMasses,
  groupDryKg,
  type Lot,
  type PartMasses,
  parts,
  splitLot,
  totalDryKg,
  totalKg,
  totalWaterKg,
  type WaterMasses,
  waterGroups,
} from '../lot.ts';
import { poundsFromKilograms } from '../units.ts';
import { fieldCleaner, harvestFacts } from './facts.ts';
import { foreignMatterFraction, type HarvestMethod, isPoorCrop, takenAlongKg } from './foreign-matter.ts';
import { seedCottonWaterKg } from './seed-cotton-water.ts';

/** What stands in the field on the day. */
export interface StandingCrop {
  /** Seed cotton in the open bolls of the whole field: lint, seed, motes; air-dry. */
  readonly grown: Lot;
  /** Share of it that rain and wind have taken since opening, 0 to 1. */
  readonly weatheredFraction: number;
  /** Leaf still on the plant, 0 to 1. */
  readonly leafRemaining: number;
  readonly acres: number;
  readonly lintLbPerAcre: number;
}

/** Things worth a sentence. */
type HarvestNote = 'leafyPlant' | 'poorCropForMachine' | 'tooWetToStore' | 'spindlesWetCotton' | 'fieldCleanerUsed';

export interface HarvestOutcome {
  readonly lot: Lot;
  readonly ledger: MassLedger;
  /** Foreign matter, motes included, in what leaves the field, % of dry weight. */
  readonly foreignMatterPercent: number;
  /** Share of the cotton still standing that was gathered, 0 to 1. */
  readonly efficiency: number;
  /** Moisture of the seed cotton that leaves the field, % wet basis. */
  readonly moisturePercent: number;
  /** People-days by hand, or hours of the machine; the other is null. */
  readonly labour: { readonly personDays: number | null; readonly machineHours: number | null };
  readonly notes: readonly HarvestNote[];
}

const isStripper = (method: HarvestMethod) => method === 'stripper' || method === 'stripperFieldCleaner';

function gatheringEfficiency(method: HarvestMethod): number {
  if (method === 'hand') return harvestFacts.handEfficiency.value;
  if (method === 'spindle') return harvestFacts.spindleEfficiency.value * harvestFacts.hardLockFraction.value;
  return harvestFacts.stripperEfficiency.value;
}

/** A stripper pulls harder than spindles or fingers: a little breakage and more neps. */
function harvestedFibre(fibre: Fibre, method: HarvestMethod): Fibre {
  if (!isStripper(method)) return fibre;
  return {
    ...fibre,
    lengths: breakByLength(fibre.lengths, machineBreakagePerMm.stripper.value),
    nepsRatio: fibre.nepsRatio * harvestFacts.stripperNepsFactor.value,
  };
}

const allParts = (fraction: number): PartMasses =>
  Object.fromEntries(parts.map((part) => [part, fraction])) as PartMasses;

/** Water gained and water lost over the groups, kg, kept apart so that neither hides in the other. */
function waterChangeKg(before: WaterMasses, after: WaterMasses): { takenUpKg: number; evaporatedKg: number } {
  let takenUpKg = 0;
  let evaporatedKg = 0;
  for (const group of waterGroups) {
    const change = after[group] - before[group];
    if (change > 0) takenUpKg += change;
    else evaporatedKg -= change;
  }
  return { takenUpKg, evaporatedKg };
}

/**
 * Gathers the crop: weather has taken its share, the machine or the hand leaves some, foreign matter comes along, a
 * stripper's field cleaner throws part of it back, and the cotton holds the decided moisture (and, from a spindle picker,
 * the water that keeps the spindles clean).
 */
export function harvest(crop: StandingCrop, decisions: DecisionsOf<'harvest'>): HarvestOutcome {
  const { method, moisturePercent } = decisions;
  const { grown, weatheredFraction, leafRemaining, acres, lintLbPerAcre } = crop;
  const weather = splitLot(grown, allParts(weatheredFraction));
  const efficiency = gatheringEfficiency(method);
  const gathering = splitLot(weather.kept, allParts(1 - efficiency));
  const cotton = gathering.kept;

  const fraction = foreignMatterFraction(method, leafRemaining, lintLbPerAcre);
  const alongDryKg = takenAlongKg(method, fraction, cotton.dryKg.lint + cotton.dryKg.seed, cotton.dryKg.motes);
  const wettingPoints = method === 'spindle' ? harvestFacts.spindleWettingPoints.value : 0;
  const dryKg = addMasses(cotton, { dryKg: alongDryKg, waterKg: cotton.waterKg }).dryKg;
  const waterKg = seedCottonWaterKg(dryKg, moisturePercent + wettingPoints);
  // What comes along is as damp as the rest of the trash.
  const trashDryKg = groupDryKg(dryKg, 'trash');
  const trashRegain = trashDryKg > 0 ? waterKg.trash / trashDryKg : 0;
  const along = {
    dryKg: alongDryKg,
    waterKg: { lint: 0, seed: 0, trash: totalDryKg(alongDryKg) * trashRegain },
  };
  const change = waterChangeKg(addMasses(cotton, along).waterKg, waterKg);

  const cleaned = splitLot({ dryKg, waterKg }, method === 'stripperFieldCleaner' ? fieldCleaner.removedFraction : {});
  const lot: Lot = { ...cleaned.kept, fibre: harvestedFibre(grown.fibre, method) };
  const seedCottonKg = totalKg(lot);
  const moistPercent = seedCottonKg > 0 ? (100 * totalWaterKg(lot.waterKg)) / seedCottonKg : 0;
  const acresPerHour = isStripper(method) ? harvestFacts.stripperAcresPerHour : harvestFacts.pickerAcresPerHour;
  return {
    lot,
    ledger: {
      station: 'harvest',
      in: [massEntry('grown', grown), massEntry('takenAlong', along), waterEntry('moistureTakenUp', change.takenUpKg)],
      out: [
        massEntry('weathered', weather.removed),
        massEntry('leftInField', addMasses(gathering.removed, cleaned.removed)),
        waterEntry('evaporated', change.evaporatedKg),
        massEntry('lot', lot),
      ],
    },
    foreignMatterPercent: foreignMatterPercent(lot.dryKg),
    efficiency,
    moisturePercent: moistPercent,
    labour:
      method === 'hand'
        ? { personDays: poundsFromKilograms(seedCottonKg) / harvestFacts.handPoundsPerDay.value, machineHours: null }
        : { personDays: null, machineHours: acres / acresPerHour.value },
    notes: notesOf(crop, method, moistPercent),
  };
}

function foreignMatterPercent(dryKg: PartMasses): number {
  const all = totalDryKg(dryKg);
  return all > 0 ? (100 * groupDryKg(dryKg, 'trash')) / all : 0;
}

function notesOf(crop: StandingCrop, method: HarvestMethod, moisturePercent: number): HarvestNote[] {
  const notes: HarvestNote[] = [];
  if (crop.leafRemaining > harvestFacts.leafyFraction.value) notes.push('leafyPlant');
  if (method !== 'hand' && isPoorCrop(method, crop.lintLbPerAcre)) notes.push('poorCropForMachine');
  if (moisturePercent > harvestFacts.storableMoisturePercent.value) notes.push('tooWetToStore');
  if (method === 'spindle') notes.push('spindlesWetCotton');
  if (method === 'stripperFieldCleaner') notes.push('fieldCleanerUsed');
  return notes;
}
