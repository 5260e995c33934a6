import type { DecisionsOf } from '../decisions.ts';
import { type MassLedger, massEntry } from '../ledger.ts';
import type { Lot } from '../lot.ts';
import type { Cloth, ClothYarn } from './cloth.ts';
import type { WovenConstruction } from './construction.ts';
import { usualCrimpPercent } from './crimp.ts';
import { processFacts } from './facts.ts';
import { knittedCloth } from './knitted-cloth.ts';
import { makeCloth } from './making.ts';
import { jamming, maximumSettPerInch } from './sett.ts';
import { yarnGramsPerSquareMetre } from './weight.ts';
import { wovenCloth } from './woven-cloth.ts';

/** What the weaving station gives. */
export interface WeavingOutcome {
  /** Finished cloth, conditioned; the yarn unchanged where it cannot be woven so close. */
  readonly lot: Lot;
  readonly ledger: MassLedger;
  /** Null where the cloth could not be woven. */
  readonly cloth: Cloth | null;
  readonly stopped: null | {
    readonly reason: 'settTooHigh';
    /** Handweaver's highest equal sett for this yarn and weave. */
    readonly maximumSettPerInch: number;
    /** Most ends at the chosen picks, and picks at the chosen ends; null where the other way alone is too close. */
    readonly highestEndsPerInch: number | null;
    readonly highestPicksPerInch: number | null;
  };
}

/**
 * Makes a lot of yarn into finished cloth. Size goes on the warp and, unless the cloth stays grey, leaves in the bath
 * with wax and specks; then the cloth draws in, with no yarn lost.
 * @param yarn the lot's yarn: warp and weft alike
 * @returns cloth and ledger; a sett closer than the yarn can lie comes back unwoven, entered as yarn
 */
export function weave(lot: Lot, yarn: ClothYarn, decisions: DecisionsOf<'weaving'>): WeavingOutcome {
  const { structure, finish, endsPerInch, picksPerInch } = decisions;
  if (structure === 'jersey') {
    const made = makeCloth(lot, 0, processFacts.knittingWaste.value, finish);
    const cloth = knittedCloth(made, yarn, lot.fibre.linearDensityMtex);
    return { lot: { ...made.finished.masses, fibre: lot.fibre }, ledger: made.ledger, cloth, stopped: null };
  }
  const crimp = usualCrimpPercent(structure);
  const grey: WovenConstruction = {
    weave: structure,
    warpTex: yarn.tex,
    weftTex: yarn.tex,
    endsPerInch,
    picksPerInch,
    warpCrimpPercent: crimp.warp,
    weftCrimpPercent: crimp.weft,
  };
  const { jammed, highestEndsPerInch, highestPicksPerInch } = jamming(grey);
  if (jammed) {
    const highest = maximumSettPerInch(yarn.tex, yarn.tex, structure);
    return {
      lot,
      ledger: { station: 'weaving', in: [massEntry('lot', lot)], out: [massEntry('yarn', lot)] },
      cloth: null,
      stopped: { reason: 'settTooHigh', maximumSettPerInch: highest, highestEndsPerInch, highestPicksPerInch },
    };
  }
  const grams = yarnGramsPerSquareMetre(grey);
  const made = makeCloth(lot, grams.warp / (grams.warp + grams.weft), processFacts.weavingWaste.value, finish);
  const cloth = wovenCloth(made, yarn, grey, lot.fibre.linearDensityMtex);
  return { lot: { ...made.finished.masses, fibre: lot.fibre }, ledger: made.ledger, cloth, stopped: null };
}
