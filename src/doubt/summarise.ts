/** Shares of the values that lie below each quantile told. */
export const quantileShares = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

/** Values lying in one stretch: from its low end up to, but for the last one, not including its high end. */
export interface Bin {
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

/** A heap of values in a few numbers. */
export interface Summary {
  readonly count: number;
  readonly least: number;
  readonly most: number;
  /** At the shares of quantileShares, in their order. */
  readonly quantiles: readonly [number, number, number, number, number];
  /** The values in order between which each quantile lies, and how far from the first to the second, 0 to 1. */
  readonly between: readonly { readonly low: number; readonly high: number; readonly part: number }[];
  /** Stretches of equal width from least to most. */
  readonly bins: readonly Bin[];
}

const defaultBins = 24;

/**
 * A quantile by linear interpolation between the values in order: definition 7 of Hyndman & Fan 1996, which puts the least
 * value at 0 and the greatest at 1.
 */
export function quantileOf(sorted: readonly number[], share: number): number {
  const { low, high, part } = betweenOf(sorted, share);
  return low + part * (high - low);
}

/** The values in order between which a quantile lies. */
function betweenOf(sorted: readonly number[], share: number): Summary['between'][number] {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  return { low: sorted[below]!, high: sorted[Math.min(below + 1, sorted.length - 1)]!, part: place - below };
}

/**
 * Quantiles and bins of some values.
 * @returns null where there is no value
 */
export function summarise(values: readonly number[], binCount = defaultBins): Summary | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const least = sorted[0]!;
  const most = sorted.at(-1)!;
  const width = (most - least) / binCount;
  const counts = new Array<number>(binCount).fill(0);
  for (const value of sorted) {
    const bin = width > 0 ? Math.min(binCount - 1, Math.floor((value - least) / width)) : 0;
    counts[bin]!++;
  }
  const [p5, p25, p50, p75, p95] = quantileShares.map((share) => quantileOf(sorted, share));
  return {
    count: values.length,
    least,
    most,
    quantiles: [p5!, p25!, p50!, p75!, p95!],
    between: quantileShares.map((share) => betweenOf(sorted, share)),
    bins: counts.map((count, i) => ({
      low: least + i * width,
      high: i === binCount - 1 ? most : least + (i + 1) * width,
      count,
    })),
  };
}
