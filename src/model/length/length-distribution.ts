import { latticeFacts } from './lattice-facts.ts';
import { arrayFacts } from './reading-facts.ts';

/**
 * A fibre length distribution: numbers of fibres at the lengths h, 2h, ... 130h (h = 0.5 mm), for one millimetre of
 * fibre in all. Keeping the total length at one makes mass (length x one linear density) the lot's business and shape
 * this file's.
 *
 * Lattice points, not bin mid-points: then the two pieces of a broken fibre always add up to the fibre.
 */
export type LengthDistribution = Readonly<Float64Array>;

/** Spacing of the lattice, mm. */
export const stepMm: number = latticeFacts.stepMm.value;
/** Longest length held: 65 mm, above the longest Sea Island fibre. */
export const lengthCount: number = latticeFacts.lengthCount.value;
/** Fibres below half an inch count as short (by weight: the trade's short fibre content). */
export const shortBelowMm = arrayFacts.shortBelowMm.value;

/** The length of a lattice index, mm. Index 0 is the shortest fibre, one step long. */
export const lengthAtMm = (index: number): number => (index + 1) * stepMm;

/** Total fibre length of raw numbers, mm. */
export function totalLengthMm(numbers: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < numbers.length; i++) sum += numbers[i]! * lengthAtMm(i);
  return sum;
}

/**
 * Scales raw numbers so that their total length is 1 mm.
 * @throws RangeError when there is no fibre at all
 */
export function normalised(numbers: ArrayLike<number>): LengthDistribution {
  const total = totalLengthMm(numbers);
  if (!(total > 0)) throw new RangeError('a length distribution needs at least one fibre');
  return Float64Array.from({ length: lengthCount }, (_, i) => (numbers[i] ?? 0) / total);
}

/** Every fibre of one length, put on the nearest lattice point. */
export function uniformLength(lengthMm: number): LengthDistribution {
  const numbers = new Float64Array(lengthCount);
  numbers[Math.min(lengthCount - 1, Math.max(0, Math.round(lengthMm / stepMm) - 1))] = 1;
  return normalised(numbers);
}

/**
 * A continuous law put on the lattice by the second difference of its fibrogram at the nodes, which keeps its number and
 * its total length exactly.
 * @param fibrogram F(x) = integral from x of (l - x) n(l) dl, for x in mm
 */
export function fromFibrogram(fibrogram: (xMm: number) => number): LengthDistribution {
  const nodes = Float64Array.from({ length: lengthCount + 2 }, (_, i) => fibrogram(i * stepMm));
  return normalised(
    Float64Array.from({ length: lengthCount }, (_, i) => (nodes[i]! - 2 * nodes[i + 1]! + nodes[i + 2]!) / stepMm),
  );
}

/**
 * Unbroken fibres: a Gaussian peak by mass.
 * @param centreMm centre of the peak
 * @param relativeSpread standard deviation as a share of the centre
 */
export function gaussianByMass(centreMm: number, relativeSpread: number): LengthDistribution {
  const sd = centreMm * relativeSpread;
  return normalised(
    Float64Array.from({ length: lengthCount }, (_, i) => {
      const l = lengthAtMm(i);
      return Math.exp(-((l - centreMm) ** 2) / (2 * sd * sd)) / l;
    }),
  );
}

/**
 * Mixes distributions by their share of total fibre length (equal to mass share when the linear densities agree).
 * @param components shares need not add up to one
 * @throws RangeError when the shares add up to nothing
 */
export function blend(
  components: readonly { readonly lengths: LengthDistribution; readonly share: number }[],
): LengthDistribution {
  const numbers = new Float64Array(lengthCount);
  for (const { lengths, share } of components) {
    for (let i = 0; i < lengthCount; i++) numbers[i] = numbers[i]! + lengths[i]! * share;
  }
  return normalised(numbers);
}
