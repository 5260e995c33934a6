import { readBeard } from './beard.ts';
import { breakAtRandom } from './breakage.ts';
import { classCardFacts } from './class-card-facts.ts';
import { searchFacts } from './lattice-facts.ts';
import { gaussianByMass, type LengthDistribution } from './length-distribution.ts';

/** The two length figures on a class card. */
export interface ClassCardLength {
  /** Upper half mean length, mm. */
  readonly upperHalfMeanMm: number;
  /** Uniformity index, percent. */
  readonly uniformityPercent: number;
}

/** Fibre lengths that read like a class card, and how they were made. */
export interface ClassCardFit {
  readonly lengths: LengthDistribution;
  /** Centre of the unbroken fibres by mass, mm. */
  readonly centreMm: number;
  /** Random breaks suffered, per mm of fibre. */
  readonly breaksPerMm: number;
}

const { uplandPeakSpread, pimaPeakSpread, mostBreaks } = classCardFacts;
const halvings = searchFacts.cardHalvings.value;
const corrections = searchFacts.cardCorrections.value;

/** The cotton with so many breaks whose upper half mean is the card's: the reading grows almost in step with the centre. */
function withUpperHalfMean(upperHalfMeanMm: number, breaksPerMm: number, spread: number): ClassCardFit {
  let centreMm = upperHalfMeanMm;
  let lengths = breakAtRandom(gaussianByMass(centreMm, spread), breaksPerMm);
  for (let i = 0; i < corrections; i++) {
    centreMm *= upperHalfMeanMm / readBeard(lengths).upperHalfMeanMm;
    lengths = breakAtRandom(gaussianByMass(centreMm, spread), breaksPerMm);
  }
  return { lengths, centreMm, breaksPerMm };
}

/**
 * Fibre lengths behind a class card: one peak of unbroken fibres, broken at random until the classing instrument would read
 * the card's two figures. A bale from the gin chain has about one point less short fibre than this at the same figures,
 * since its waste took some and its saws broke long fibres first.
 * @param card upper half mean about 20 to 40 mm, uniformity about 70 to 87 % (Pima 89); beyond that the nearest cotton is given
 * @param kind Pima has the narrower peak
 */
export function lengthsFromClassCard(card: ClassCardLength, kind: 'upland' | 'pima' = 'upland'): ClassCardFit {
  const spread = (kind === 'pima' ? pimaPeakSpread : uplandPeakSpread).value;
  let low = 0;
  let high: number = mostBreaks.value;
  let fit = withUpperHalfMean(card.upperHalfMeanMm, low, spread);
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2;
    const tried = withUpperHalfMean(card.upperHalfMeanMm, middle, spread);
    if (readBeard(tried.lengths).uniformityPercent > card.uniformityPercent) {
      low = middle;
      fit = tried;
    } else {
      high = middle;
    }
  }
  return fit;
}
