import { readBeard } from '../model/length/beard.ts';
import { breakAtRandom } from '../model/length/breakage.ts';
import { classCardFacts } from '../model/length/class-card-facts.ts';
import { gaussianByMass, type LengthDistribution } from '../model/length/length-distribution.ts';
import { lengthArrayMm, meanLengthMm, shortFibrePercent } from '../model/length/statistics.ts';

export const sampleCottonIds = ['short', 'medium', 'long', 'pima'] as const;
/** Three cottons of one staple, from the most mixed lengths to the most alike. */
export const evennessIds = ['uneven', 'medium', 'even'] as const;
export type SampleCottonId = (typeof sampleCottonIds)[number] | (typeof evennessIds)[number];

/** A cotton to lay out in a lesson: what its class card would say, and the fibres that read so. */
interface SampleCotton {
  readonly kind: 'upland' | 'pima';
  readonly card: { readonly upperHalfMeanMm: number; readonly uniformityPercent: number };
  /** As the model fits them to the card: worked out beforehand, since the search takes a while on a phone. A test asks it again. */
  readonly centreMm: number;
  readonly breaksPerMm: number;
}

/**
 * Six cottons. The medium one and Pima are crop means (USDA-AMS: upland 2010 to 2012 staple 35.5 and uniformity 1998 to 2002;
 * American Pima); the others are examples of ours inside the usual range.
 */
export const sampleCottons: Readonly<Record<SampleCottonId, SampleCotton>> = {
  short: {
    kind: 'upland',
    card: { upperHalfMeanMm: 25.4, uniformityPercent: 80 },
    centreMm: 27.42655,
    breaksPerMm: 0.0233861,
  },
  medium: {
    kind: 'upland',
    card: { upperHalfMeanMm: 28.2, uniformityPercent: 81.3 },
    centreMm: 30.207598,
    breaksPerMm: 0.017132,
  },
  long: {
    kind: 'upland',
    card: { upperHalfMeanMm: 30.2, uniformityPercent: 82.7 },
    centreMm: 32.09025,
    breaksPerMm: 0.0122555,
  },
  uneven: {
    kind: 'upland',
    card: { upperHalfMeanMm: 28.2, uniformityPercent: 77 },
    centreMm: 31.128576,
    breaksPerMm: 0.0301035,
  },
  even: {
    kind: 'upland',
    card: { upperHalfMeanMm: 28.2, uniformityPercent: 85 },
    centreMm: 29.575734,
    breaksPerMm: 0.0067362,
  },
  pima: {
    kind: 'pima',
    card: { upperHalfMeanMm: 36.3, uniformityPercent: 86 },
    centreMm: 39.85076,
    breaksPerMm: 0.0082958,
  },
};

/** The fibres of a sample cotton. */
function sampleLengths(id: SampleCottonId): LengthDistribution {
  const { kind, centreMm, breaksPerMm } = sampleCottons[id];
  const spread = (kind === 'pima' ? classCardFacts.pimaPeakSpread : classCardFacts.uplandPeakSpread).value;
  return breakAtRandom(gaussianByMass(centreMm, spread), breaksPerMm);
}

/** A sample cotton as a hand sorter and the classing instrument see it. */
export interface ReadCotton {
  /** Fibres laid side by side, longest first, mm. */
  readonly lengthsMm: readonly number[];
  readonly upperHalfMeanMm: number;
  readonly uniformityPercent: number;
  /** Mean of all fibres, each counted once, mm. */
  readonly meanMm: number;
  /** Of a hundred fibres, how many are under half an inch. */
  readonly shortPercentByNumber: number;
  readonly shortPercentByWeight: number;
}

/** @param fibreCount fibres to lay out */
export function readSample(id: SampleCottonId, fibreCount: number): ReadCotton {
  const lengths = sampleLengths(id);
  return {
    lengthsMm: lengthArrayMm(lengths, fibreCount),
    ...readBeard(lengths),
    meanMm: meanLengthMm(lengths, 'number'),
    shortPercentByNumber: shortFibrePercent(lengths, 'number'),
    shortPercentByWeight: shortFibrePercent(lengths, 'weight'),
  };
}
