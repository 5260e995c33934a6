import { roundingFacts } from '../rounding-facts.ts';
import { searchFacts } from './lattice-facts.ts';
import { type LengthDistribution, lengthAtMm, lengthCount } from './length-distribution.ts';
import { beardFacts } from './reading-facts.ts';

/** What a length instrument reports of a beard of fibres. */
export interface BeardReading {
  /** Upper half mean length, mm. */
  readonly upperHalfMeanMm: number;
  /** Mean length, mm. */
  readonly meanMm: number;
  /** Uniformity index: 100 x mean / upper half mean, percent. */
  readonly uniformityPercent: number;
}

/** How the beard sees the fibres. */
export interface BeardModel {
  /** Fibres are weighted by length to this power: longer fibres are caught more often. Calibrated. */
  readonly weightExponent: number;
  /** Instrument length over array length. Calibrated. */
  readonly lengthScale: number;
  /** Where the scan starts, mm from the clamp. From memory. */
  readonly startMm: number;
}

/** The reading model that brings the classed levels out. */
export const classingBeard: BeardModel = {
  weightExponent: beardFacts.weightExponent.value,
  lengthScale: beardFacts.lengthScale.value,
  startMm: beardFacts.startMm.value,
};
/** Plain tangent theory on numbers, for the checks against closed forms. */
export const plainBeard = (startMm: number): BeardModel => ({ weightExponent: 0, lengthScale: 1, startMm });

/**
 * Reads the fibrogram with tangents: the mean length is where the tangent at the start meets the length axis, the upper
 * half mean where the tangent from half the amount does. Between lattice points the fibrogram is exact, since it is
 * piecewise linear there.
 */
export function readBeard(lengths: LengthDistribution, model: BeardModel = classingBeard): BeardReading {
  const { weightExponent, lengthScale, startMm } = model;
  // Suffix sums of g(l) and of l g(l) on the instrument's length axis.
  const longer = new Float64Array(lengthCount + 1);
  const lengthLonger = new Float64Array(lengthCount + 1);
  for (let i = lengthCount - 1; i >= 0; i--) {
    const x = lengthAtMm(i) * lengthScale;
    const g = lengths[i]! * lengthAtMm(i) ** weightExponent;
    longer[i] = longer[i + 1]! + g;
    lengthLonger[i] = lengthLonger[i + 1]! + g * x;
  }
  const firstLonger = (x: number) => {
    const index = Math.floor(x / (lengthScale * lengthAtMm(0)) + roundingFacts.hair.value);
    return Math.min(lengthCount, Math.max(0, index));
  };
  const survivors = (x: number) => longer[firstLonger(x)]!;
  const fibrogram = (x: number) => lengthLonger[firstLonger(x)]! - x * survivors(x);

  const meanMm = startMm + fibrogram(startMm) / startSlope(startMm, longer, lengthScale);
  const half = fibrogram(startMm) / 2;
  // The tangent at x meets the amount axis (at the start) at F(x) + (x - start) S(x), which falls with x.
  let low = startMm;
  let high = lengthAtMm(lengthCount - 1) * lengthScale;
  for (let i = 0; i < searchFacts.halvings.value; i++) {
    const middle = (low + high) / 2;
    if (fibrogram(middle) + (middle - startMm) * survivors(middle) > half) low = middle;
    else high = middle;
  }
  const x = (low + high) / 2;
  const upperHalfMeanMm = tangentMeets(x, half, startMm, lengthLonger, longer, lengthScale);
  return { upperHalfMeanMm, meanMm, uniformityPercent: (100 * meanMm) / upperHalfMeanMm };
}

/** Slope at the start of the scan: between the middles of two steps, where S is exact, it is taken as straight. */
function startSlope(startMm: number, longer: Float64Array, lengthScale: number): number {
  const place = startMm / (lengthScale * lengthAtMm(0)) - 1 / 2;
  const index = Math.max(0, Math.floor(place));
  const share = Math.max(0, place - index);
  return longer[index]! * (1 - share) + longer[index + 1]! * share;
}

/** The length where the tangent from `half` meets the axis; on the lattice S jumps, so the slope is interpolated to pass exactly through `half`. */
function tangentMeets(
  x: number,
  half: number,
  startMm: number,
  lengthLonger: Float64Array,
  longer: Float64Array,
  lengthScale: number,
): number {
  const node = Math.round(x / (lengthScale * lengthAtMm(0))) - 1;
  const nodeMm = lengthAtMm(node) * lengthScale;
  if (Math.abs(nodeMm - x) > searchFacts.nodeMm.value || node < 0)
    return x + (lengthLonger[node + 1]! - x * longer[node + 1]!) / longer[node + 1]!;
  // At a node any slope between the two sides is a tangent; take the one that starts at `half`.
  const at = lengthLonger[node]! - nodeMm * longer[node]!;
  const slope = (half - at) / (nodeMm - startMm);
  return nodeMm + at / slope;
}
