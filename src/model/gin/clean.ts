import type { DecisionsOf } from '../decisions.ts';
import type { Fibre } from '../fibre.ts';
import { type MassLedger, massEntry } from '../ledger.ts';
import { type Lot, moistureFraction, splitLot, totalKg } from '../lot.ts';
import { dry, type OutsideAir } from './dryer.ts';
import { cleaningFacts, dryingFacts } from './facts.ts';
import { type SeedCottonMachine, seedCottonRemoval } from './machine-facts.ts';
import { type MachineStep, type Masses, removedTo, trashRemovedFraction } from './machine-step.ts';
import { distribute, type OverflowFlows } from './overflow.ts';
import { removalUnder } from './removal-factors.ts';

/** What the gin cannot decide. */
export interface CleaningContext extends Partial<OutsideAir> {
  readonly harvestMethod: DecisionsOf<'harvest'>['method'];
  /** How hard the cleaners are loaded, bales an hour for each foot of width. */
  readonly loadingBalesPerHourFoot?: number;
  /** Share of the distributor's load that overflows. */
  readonly overflowShare?: number;
}

export interface CleaningOutcome {
  readonly lot: Lot;
  readonly ledger: MassLedger;
  readonly machines: readonly MachineStep[];
  readonly overflow: OverflowFlows;
  /** Seed cotton that went through the overflow hopper, kg. */
  readonly overflowKg: number;
  /** Share of the foreign matter taken out before the stand, 0 to 1. */
  readonly trashRemovedFraction: number;
  /** Lint moisture as the stand gets it, % wet basis. */
  readonly lintMoisturePercent: number;
}

const leafFactorOf = (method: CleaningContext['harvestMethod']): number =>
  method === 'stripper' || method === 'stripperFieldCleaner'
    ? cleaningFacts.leafFactorStripped.value
    : cleaningFacts.leafFactorPicked.value;

const opened = (fibre: Fibre): Fibre => ({ ...fibre, nepsRatio: fibre.nepsRatio * cleaningFacts.nepsFactor.value });

/** The machines that comb the locks apart; feeding and distributing leave the fibre as it is. */
const combs: Record<SeedCottonMachine, boolean> = {
  moduleFeeder: false,
  cylinderCleaner: true,
  stickMachine: true,
  separator: false,
  extractorFeeder: true,
};

/** The machines that the decisions ask for, after the module feeder: dry, shake, comb, and the same again. */
function lineOf({ dryers, cylinderCleaners, stickMachines }: DecisionsOf<'cleaning'>): string[] {
  const counts = { dryer: dryers, cylinderCleaner: cylinderCleaners, stickMachine: stickMachines };
  const rounds = Array.from({ length: Math.max(...Object.values(counts)) }, (_, index) => index + 1);
  return rounds.flatMap((round) =>
    Object.entries(counts).flatMap(([machine, count]) => (count >= round ? [`${machine}${round}`] : [])),
  );
}

/**
 * Takes modules (or a wagon, by suction) apart, dries and cleans the seed cotton, and shares it out over the stands; the
 * surplus runs round through the overflow hopper. The lot returned is what the extractor-feeders drop into the stands.
 */
export function cleanSeedCotton(
  lot: Lot,
  decisions: DecisionsOf<'cleaning'>,
  context: CleaningContext,
): CleaningOutcome {
  const leafFactor = leafFactorOf(context.harvestMethod);
  const loading = context.loadingBalesPerHourFoot ?? cleaningFacts.loadingBalesPerHourFoot.value;
  const share = context.overflowShare ?? cleaningFacts.overflowShare.value;
  const outside: OutsideAir = {
    outsideF: context.outsideF ?? dryingFacts.outsideF.value,
    outsideHumidity: context.outsideHumidity ?? dryingFacts.outsideHumidity.value,
  };
  const fractions = (kind: SeedCottonMachine, masses: Masses) =>
    removalUnder(seedCottonRemoval[kind].removedFraction, {
      lintMoisturePercent: 100 * moistureFraction(masses, 'lint'),
      leafFactor,
      loadingBalesPerHourFoot: loading,
    });
  const clean = (machine: string, kind: SeedCottonMachine, before: Masses, fibre: Fibre): MachineStep => {
    const { kept, removed } = splitLot(before, fractions(kind, before));
    return {
      machine,
      in: before,
      added: [],
      removed: [{ account: 'ginTrash', masses: removed }],
      out: kept,
      fibreBefore: fibre,
      fibreAfter: combs[kind] ? opened(fibre) : fibre,
    };
  };

  const machines = [clean('moduleFeeder', 'moduleFeeder', lot, lot.fibre)];
  for (const machine of lineOf(decisions)) {
    const { out, fibreAfter } = machines.at(-1)!;
    if (machine.startsWith('dryer')) machines.push(dry(machine, out, fibreAfter, decisions.dryerAirF, outside));
    else
      machines.push(
        clean(machine, machine.startsWith('cylinder') ? 'cylinderCleaner' : 'stickMachine', out, fibreAfter),
      );
  }
  const fed = machines.at(-1)!;
  const overflow = distribute(fed.out, share, fractions('separator', fed.out));
  machines.push({
    machine: 'distributor',
    in: fed.out,
    added: [],
    removed: [{ account: 'ginTrash', masses: overflow.removed }],
    out: overflow.toFeeders,
    fibreBefore: fed.fibreAfter,
    fibreAfter: fed.fibreAfter,
  });
  machines.push(clean('extractorFeeder', 'extractorFeeder', overflow.toFeeders, fed.fibreAfter));
  const last = machines.at(-1)!;
  const cleaned: Lot = { ...last.out, fibre: last.fibreAfter };
  return {
    lot: cleaned,
    ledger: {
      station: 'cleaning',
      in: [massEntry('lot', lot)],
      out: [
        massEntry('ginTrash', removedTo(machines, 'ginTrash')),
        massEntry('evaporated', removedTo(machines, 'evaporated')),
        massEntry('lot', cleaned),
      ],
    },
    machines,
    overflow,
    overflowKg: totalKg(overflow.overflow),
    trashRemovedFraction: trashRemovedFraction(lot, cleaned),
    lintMoisturePercent: 100 * moistureFraction(cleaned, 'lint'),
  };
}
