import type { DecisionsOf } from '../decisions.ts';
import { type MassLedger, massEntry } from '../ledger.ts';
import { type Lot, type PartMasses, partMasses, parts, splitLot, totalKg } from '../lot.ts';
import { KILO, kilogramsFromPounds, MM_PER_INCH, POUNDS_PER_STATISTICAL_BALE } from '../units.ts';
import type { BothWays, Cloth } from './cloth.ts';
import { areaKept } from './cloth-in-use.ts';
import { processFacts } from './facts.ts';
import { type NeedleHint, needleFor } from './needle.ts';

/** What came before, counted: the cloth of a lot is spread over them. */
export interface ClothOrigin {
  /** Bolls whose lint is in this cloth, with those whose lint was lost on the way. */
  readonly bolls: number;
  /** Net weight of the bales that were spun, kg. */
  readonly baleNetKg: number;
}

/** What the sewing table gives. The ledger leaves no lot: all is cloth, offcuts or washed out. */
export interface SewingOutcome {
  readonly ledger: MassLedger;
  /** Cloth as it is cut: after the wash where there was one. */
  readonly squareMetres: number;
  readonly gramsPerSquareMetre: number;
  /** In the pieces, kg with water. */
  readonly piecesKg: number;
  readonly offcutsKg: number;
  /** Shrinkage still to come in the first wash; none after prewashing. */
  readonly shrinkLeftPercent: BothWays;
  /** Running yards of finished cloth from a bale of 480 lb. Null where no bale was counted. */
  readonly yardsPerBale: number | null;
  /** Side of the square of finished cloth that one boll's lint makes, inches. Null where no boll was counted. */
  readonly patchInchesPerBoll: number | null;
  /** The same patch once its seam allowances are sewn in; 0 where they take it all. */
  readonly sewnPatchInches: number | null;
  readonly needle: NeedleHint;
}

const inchesPerMetre = KILO / MM_PER_INCH;

/**
 * Washes (where wished), cuts and counts.
 * @param lot the finished cloth
 * @param cloth what weave made of it
 */
export function sewingTable(
  lot: Lot,
  cloth: Cloth,
  decisions: DecisionsOf<'sewing'>,
  origin: ClothOrigin,
): SewingOutcome {
  const { prewash, seamInches } = decisions;
  // A wash floats off the starch that grey cloth still holds; then the cloth dries to the moisture it had.
  const washed = splitLot(lot, partMasses({ size: prewash ? 1 : 0 }));
  const share = processFacts.cuttingLoss.value;
  const cut = splitLot(washed.kept, Object.fromEntries(parts.map((part) => [part, share])) as PartMasses);

  const left = cloth.shrinkLeftPercent;
  const squareMetres = cloth.squareMetres * (prewash ? areaKept(left) : 1);
  const gramsPerSquareMetre = squareMetres > 0 ? (totalKg(washed.kept) * KILO) / squareMetres : 0;
  const bales = origin.baleNetKg / kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE);
  const patchInches = origin.bolls > 0 ? Math.sqrt(cloth.squareMetres / origin.bolls) * inchesPerMetre : null;
  return {
    ledger: {
      station: 'sewing',
      in: [massEntry('lot', lot)],
      out: [
        ...(lot.dryKg.size > 0 && prewash ? [massEntry('effluent' as const, washed.removed)] : []),
        massEntry('offcuts', cut.removed),
        massEntry('cloth', cut.kept),
      ],
    },
    squareMetres,
    gramsPerSquareMetre,
    piecesKg: totalKg(cut.kept),
    offcutsKg: totalKg(cut.removed),
    shrinkLeftPercent: prewash ? { length: 0, width: 0 } : left,
    yardsPerBale: bales > 0 ? cloth.runningYards / bales : null,
    patchInchesPerBoll: patchInches,
    sewnPatchInches: patchInches === null ? null : Math.max(0, patchInches - 2 * seamInches),
    needle: needleFor(gramsPerSquareMetre),
  };
}
