import { gsmFromOuncesPerSquareYard } from '../units.ts';
import { feelFacts } from './facts.ts';

/** How a cloth bends. */
export interface Drape {
  /** Bending length that the fibres alone would give, mm. */
  readonly floorMm: number;
  /** Bending length, mm: half the overhang at 41.5 degrees. */
  readonly bendingLengthMm: number;
  /** Flexural rigidity, micronewton metres. */
  readonly rigidity: number;
  readonly word: 'fluid' | 'medium' | 'crisp';
}

const mmPerMetre = 1000;
const gramsPerKilogram = 1000;
const microPerUnit = 1e6;

/** Bending length of a strip whose fibres slide freely, mm: c^3 = r T f / g, f the share of fibre along the strip. */
export function bendingFloorMm(fibreTex: number, shareAlong: number): number {
  const newtonsPerGram = feelFacts.gravity.value / gramsPerKilogram;
  // r in mN mm2/tex2 and T in tex give mN mm2 for each tex, and a tex is 1e-6 g in each mm.
  const milliNewtonsPerTexMm = newtonsPerGram * 1000 * 1e-6;
  return Math.cbrt((feelFacts.fibreRigidity.value * fibreTex * shareAlong) / milliNewtonsPerTexMm);
}

/** Flexural rigidity from bending length, uN m: G = W g c^3. */
export const flexuralRigidity = (gramsPerSquareMetre: number, bendingLengthMm: number): number =>
  (gramsPerSquareMetre / gramsPerKilogram) *
  feelFacts.gravity.value *
  (bendingLengthMm / mmPerMetre) ** 3 *
  microPerUnit;

/**
 * Drape of a cloth: the floor of its fibres, raised where yarns press on each other.
 * @param coverFraction share of the area covered; 0 for a knit, whose loops give way
 * @param interlacing 1 for plain cloth, less where yarns float
 */
export function drapeOf(
  gramsPerSquareMetre: number,
  coverFraction: number,
  interlacing: number,
  fibreMtex: number,
): Drape {
  const { pressRise, pressPower, fluidBelow, crispAbove } = feelFacts;
  const evenShare = 0.5;
  const floorMm = bendingFloorMm(fibreMtex / 1000, evenShare);
  const stiffer = 1 + pressRise.value * coverFraction ** pressPower.value * interlacing;
  const bendingLengthMm = floorMm * Math.cbrt(stiffer);
  const rigidity = flexuralRigidity(gramsPerSquareMetre, bendingLengthMm);
  const word = rigidity < fluidBelow.value ? 'fluid' : rigidity > crispAbove.value ? 'crisp' : 'medium';
  return { floorMm, bendingLengthMm, rigidity, word };
}

/** Fuzz and pilling in a word, from the fibre ends of the yarn and its short fibre. */
export function fuzzOf(fibreEndsPerCm: number, shortFibrePercent: number): 'little' | 'some' | 'much' {
  const { fuzzEndsPerCm, fuzzShortPercent, fuzzLittleBelow, fuzzMuchAbove } = feelFacts;
  const fuzz = (fibreEndsPerCm / fuzzEndsPerCm.value) * (1 + shortFibrePercent / fuzzShortPercent.value);
  return fuzz < fuzzLittleBelow.value ? 'little' : fuzz > fuzzMuchAbove.value ? 'much' : 'some';
}

/** Whether plain-surface cloth is heavy enough to need no flame test under 16 CFR 1610. Raised surfaces always need one. */
export const flameExempt = (gramsPerSquareMetre: number): boolean =>
  gramsPerSquareMetre >= gsmFromOuncesPerSquareYard(feelFacts.flameOunces.value);
