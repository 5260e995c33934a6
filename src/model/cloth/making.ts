import { type Conditioned, condition } from '../conditioning.ts';
import { type MassEntry, type MassLedger, massEntry, type SourceAccount, waterEntry } from '../ledger.ts';
import { addMasses, type Lot, type PartMasses, partMasses, parts, splitLot, totalDryKg, trashParts } from '../lot.ts';
import { KILO } from '../units.ts';
import { type ClothFinish, finishLoss, processFacts } from './facts.ts';

type Masses = Pick<Lot, 'dryKg' | 'waterKg'>;
const noWater = { lint: 0, seed: 0, trash: 0 };

/** Yarn made into finished cloth, as masses. */
export interface Made {
  readonly finish: ClothFinish;
  /** Dry mass after weaving or knitting, before finishing: yarn and size, kg. */
  readonly greyYarnDryKg: number;
  readonly greySizeDryKg: number;
  readonly finished: Conditioned;
  readonly regain: number;
  readonly ledger: MassLedger;
}

/** Yarn in the grey cloth, km: tex is counted at the regain of the trade. */
export const greyKilometres = (made: Made, tex: number): number =>
  (made.greyYarnDryKg * (1 + processFacts.regain.value) * KILO) / tex;

/** Water that the finished cloth holds for its dry mass. */
const regainOf = (finish: ClothFinish): number =>
  finish === 'mercerised' ? processFacts.mercerisedRegain.value : processFacts.regain.value;

/** What a bath takes: all the size, the finish's share of the lint, most of the specks. */
export function bathShares(finish: ClothFinish): PartMasses {
  if (finish === 'grey') return partMasses({});
  const specks = processFacts.trashBoiledOut.value;
  const trash = Object.fromEntries([...trashParts, 'seed' as const].map((part) => [part, specks]));
  return partMasses({ ...trash, size: 1, lint: finishLoss[finish].value });
}

/**
 * Takes yarn through sizing, the loom or knitting machine, and the finishing bath, and leaves it in the air.
 * @param warpShare share of the yarn's mass in the warp, which takes the size; 0 for a knit
 * @param wasteShare hard waste, of every part
 */
export function makeCloth(lot: Lot, warpShare: number, wasteShare: number, finish: ClothFinish): Made {
  const sizeKg = totalDryKg(lot.dryKg) * warpShare * processFacts.sizeShare.value;
  const size: Masses = { dryKg: partMasses({ size: sizeKg }), waterKg: noWater };
  const everything = Object.fromEntries(parts.map((part) => [part, wasteShare])) as PartMasses;
  const made = splitLot(addMasses(lot, size), everything);
  const bath = splitLot(made.kept, bathShares(finish));
  const printKg = finish === 'printed' ? totalDryKg(bath.kept.dryKg) * processFacts.printAddOn.value : 0;
  const print: Masses = { dryKg: partMasses({ finish: printKg }), waterKg: noWater };
  const regain = regainOf(finish);
  const finished = condition(addMasses(bath.kept, print), regain);

  const sources: MassEntry<SourceAccount | 'lot'>[] = [massEntry('lot', lot)];
  if (sizeKg > 0) sources.push(massEntry('warpSize', size));
  if (printKg > 0) sources.push(massEntry('finish', print));
  if (finished.takenUpKg > 0) sources.push(waterEntry('moistureTakenUp', finished.takenUpKg));
  const greyDryKg = totalDryKg(made.kept.dryKg);
  return {
    finish,
    greyYarnDryKg: greyDryKg - made.kept.dryKg.size,
    greySizeDryKg: made.kept.dryKg.size,
    finished,
    regain,
    ledger: {
      station: 'weaving',
      in: sources,
      out: [
        massEntry('hardWaste', made.removed),
        ...(finish === 'grey' ? [] : [massEntry('effluent', bath.removed)]),
        ...(finished.evaporatedKg > 0 ? [waterEntry('evaporated', finished.evaporatedKg)] : []),
        massEntry('lot', finished.masses),
      ],
    },
  };
}
