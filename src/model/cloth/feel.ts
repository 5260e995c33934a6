import { gsmFromOuncesPerSquareYard, KILO, MEGA, NEWTONS_PER_KILOGRAM_FORCE } from '../units.ts';
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

/** Bending length of a strip whose fibres slide freely, mm: c^3 = r T f / g, f the share of fibre along the strip. */
export function bendingFloorMm(fibreTex: number, shareAlong: number): number {
  // r in mN mm2/tex2 and T in tex give mN mm2 for each tex, and a tex is 1e-6 g in each mm; a gram weighs as many mN as a kg weighs N.
  const milliNewtonsPerTexMm = NEWTONS_PER_KILOGRAM_FORCE / MEGA;
  return Math.cbrt((feelFacts.fibreRigidity.value * fibreTex * shareAlong) / milliNewtonsPerTexMm);
}

/** Flexural rigidity from bending length, uN m: G = W g c^3. */
export function flexuralRigidity(gramsPerSquareMetre: number, bendingLengthMm: number): number {
  const metres = bendingLengthMm / KILO;
  return (gramsPerSquareMetre / KILO) * NEWTONS_PER_KILOGRAM_FORCE * metres * metres * metres * MEGA;
}

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
  const { pressRise, pressPower, shareAlong, fluidBelow, crispAbove } = feelFacts;
  const floorMm = bendingFloorMm(fibreMtex / KILO, shareAlong.value);
  const stiffer = 1 + pressRise.value * coverFraction ** pressPower.value * interlacing;
  const bendingLengthMm = floorMm * Math.cbrt(stiffer);
  const rigidity = flexuralRigidity(gramsPerSquareMetre, bendingLengthMm);
  const word = rigidity < fluidBelow.value ? 'fluid' : rigidity > crispAbove.value ? 'crisp' : 'medium';
  return { floorMm, bendingLengthMm, rigidity, word };
}

/** How fuzzy a yarn makes a cloth: fibre ends against the usual, more with short fibre; 1 is carded medium upland without any. */
export const fuzzScore = (fibreEndsPerCm: number, shortFibrePercent: number): number =>
  (fibreEndsPerCm / feelFacts.fuzzEndsPerCm.value) * (1 + shortFibrePercent / feelFacts.fuzzShortPercent.value);

/** Fuzz and pilling in a word, from the fibre ends of the yarn and its short fibre. */
export function fuzzOf(fibreEndsPerCm: number, shortFibrePercent: number): 'little' | 'some' | 'much' {
  const { fuzzLittleBelow, fuzzMuchAbove } = feelFacts;
  const fuzz = fuzzScore(fibreEndsPerCm, shortFibrePercent);
  return fuzz < fuzzLittleBelow.value ? 'little' : fuzz > fuzzMuchAbove.value ? 'much' : 'some';
}

/** Whether plain-surface cloth is heavy enough to need no flame test under 16 CFR 1610. Raised surfaces always need one. */
export const flameExempt = (gramsPerSquareMetre: number): boolean =>
  gramsPerSquareMetre >= gsmFromOuncesPerSquareYard(feelFacts.flameOunces.value);
