import { searchFacts } from './lattice-facts.ts';
import { type LengthDistribution, lengthAtMm, lengthCount, normalised, stepMm } from './length-distribution.ts';

/** What a length-selective removal leaves and takes. */
export interface Removal {
  readonly kept: LengthDistribution;
  readonly removed: LengthDistribution;
  /** Share of the fibre mass removed. */
  readonly removedFraction: number;
}

/**
 * Removes fibres by length.
 * @param chance share of the fibres of a length (mm) that is removed, 0 to 1
 * @throws RangeError when everything or nothing would go
 */
export function removeByLength(lengths: LengthDistribution, chance: (lengthMm: number) => number): Removal {
  const kept = new Float64Array(lengthCount);
  const removed = new Float64Array(lengthCount);
  let removedFraction = 0;
  for (let i = 0; i < lengthCount; i++) {
    const out = lengths[i]! * Math.min(1, Math.max(0, chance(lengthAtMm(i))));
    removed[i] = out;
    kept[i] = lengths[i]! - out;
    removedFraction += out * lengthAtMm(i);
  }
  return { kept: normalised(kept), removed: normalised(removed), removedFraction };
}

/**
 * Finds the number for which a family of removals takes a wanted share of the mass, by bisection. The share must rise
 * with the parameter.
 * @param chance removal chance of a length for a parameter value
 * @param wantedFraction share of the mass to remove, inside what the two ends of the bracket reach
 */
export function solveRemoval(
  lengths: LengthDistribution,
  chance: (lengthMm: number, parameter: number) => number,
  wantedFraction: number,
  bracket: readonly [low: number, high: number],
): number {
  const share = (parameter: number) => {
    let sum = 0;
    for (let i = 0; i < lengthCount; i++) {
      const l = (i + 1) * stepMm;
      sum += lengths[i]! * l * Math.min(1, Math.max(0, chance(l, parameter)));
    }
    return sum;
  };
  let [low, high] = bracket;
  for (let i = 0; i < searchFacts.halvings.value; i++) {
    const middle = (low + high) / 2;
    if (share(middle) < wantedFraction) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
