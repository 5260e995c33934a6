/** The marks on a ruler: small ones, and great ones that carry a number. */
export interface RulerTicks {
  readonly small: readonly number[];
  readonly great: readonly number[];
}

const between = (low: number, high: number, spacing: number): number[] => {
  const first = Math.ceil(low / spacing - 1e-9);
  const last = Math.floor(high / spacing + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * spacing);
};

/**
 * Marks for a ruler from low to high whose value moves by a step. Great marks stand at 1, 2 or 5 times a power of ten (never
 * closer than a step), at most six of them; small marks split them by five, four or two, as far as steps allow.
 * @param smallEvery distance of the small marks, counted from the low end; else they split the great ones
 */
export function rulerTicks(low: number, high: number, step: number, smallEvery?: number): RulerTicks {
  const span = high - low;
  const least = Math.max(step, span / 5);
  const power = 10 ** Math.floor(Math.log10(least));
  // A quarter step makes quarters, not tenths.
  const bases = Number.isInteger(step * 10) ? [1, 2, 5, 10] : [1, 1.25, 2, 2.5, 5, 10];
  const spacing =
    bases
      .map((base) => base * power)
      .find((s) => s >= least - 1e-9 && Math.abs(s / step - Math.round(s / step)) < 1e-9) ??
    Math.ceil(least / step) * step;
  const steps = Math.round(spacing / step);
  const split = [5, 4, 2].find((n) => steps % n === 0) ?? (steps <= 8 ? steps : 1);
  const small =
    smallEvery === undefined
      ? between(low, high, spacing / split)
      : between(0, high - low, smallEvery).map((from) => low + from);
  return { small, great: between(low, high, spacing) };
}
