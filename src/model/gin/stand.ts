import type { Fibre } from '../fibre.ts';
import { breakByLength } from '../length/breakage.ts';
import { machineBreakagePerMm, moistureFactor } from '../length/facts.ts';
import { addMasses, type Lot, type PartMasses, parts, splitLot } from '../lot.ts';
import { standFacts } from './facts.ts';
import { type StandKind, standSplit } from './machine-facts.ts';
import type { MachineStep, Masses } from './machine-step.ts';
import { lintMoisturePercent } from './moisten.ts';
import { standRun } from './wet-stand.ts';

/** The three streams behind a stand. */
export interface StandStreams {
  readonly lint: Masses;
  readonly seed: Masses;
  readonly waste: Masses;
}

/** Parts seed cotton at the stand: saws between ribs, or a roller with a fixed and a rotary knife. */
export function splitAtStand(masses: Masses, kind: StandKind): StandStreams {
  const toLint: Partial<PartMasses> = standSplit[kind].toLint;
  const toSeed: Partial<PartMasses> = standSplit[kind].toSeed;
  const { removed: lint, kept: rest } = splitLot(masses, toLint);
  const ofTheRest: Partial<Record<keyof PartMasses, number>> = {};
  for (const part of parts) ofTheRest[part] = (toSeed[part] ?? 0) / (1 - (toLint[part] ?? 0));
  const { removed: seed, kept: waste } = splitLot(rest, ofTheRest);
  return { lint, seed, waste };
}

/** The fibre behind a stand: broken more when dry, and by its own tendency; with more neps behind saws. */
export function ginnedFibre(fibre: Fibre, kind: StandKind, moisturePercent: number): Fibre {
  const facts = kind === 'saw' ? machineBreakagePerMm.sawStand : machineBreakagePerMm.rollerStand;
  const neps = kind === 'saw' ? standFacts.sawNepsFactor : standFacts.rollerNepsFactor;
  return {
    ...fibre,
    lengths: breakByLength(fibre.lengths, facts.value * moistureFactor(moisturePercent) * fibre.breakTendency),
    nepsRatio: fibre.nepsRatio * neps.value,
  };
}

/** The stand as a step: lint goes on, seed to the seed house, the rest to the trash, with what had to be raked out of it. */
export function ginAtStand(lot: Lot, kind: StandKind): MachineStep {
  const { rakedOutFraction } = standRun(lintMoisturePercent(lot));
  const allParts = Object.fromEntries(parts.map((part) => [part, rakedOutFraction])) as PartMasses;
  const { kept, removed: rakedOut } = splitLot(lot, allParts);
  const { lint, seed, waste } = splitAtStand(kept, kind);
  return {
    machine: kind === 'saw' ? 'sawStand' : 'rollerStand',
    in: { dryKg: lot.dryKg, waterKg: lot.waterKg },
    added: [],
    removed: [
      { account: 'seedHouse', masses: seed },
      { account: 'ginTrash', masses: addMasses(waste, rakedOut) },
    ],
    out: lint,
    fibreBefore: lot.fibre,
    fibreAfter: ginnedFibre(lot.fibre, kind, lintMoisturePercent(lot)),
  };
}
