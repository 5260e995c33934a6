import type { Check, Expected } from './check.ts';

/** A check, run. */
export interface JudgedCheck {
  readonly check: Check;
  readonly ours: number | string;
  readonly passed: boolean;
}

/** Whether a figure is what the source says. Not-a-number never is. */
export function meets(expected: Expected, ours: number | string): boolean {
  switch (expected.kind) {
    case 'near':
      return typeof ours === 'number' && Math.abs(ours - expected.value) <= expected.tolerance;
    case 'between':
      return typeof ours === 'number' && ours >= expected.low && ours <= expected.high;
    case 'is':
      return ours === expected.word;
  }
}

/**
 * Runs a check. A known miss passes while it still misses as recorded: a model that got better must say so too.
 * @returns our figure and whether the check holds; an error of the model counts as failed
 */
export function judgeCheck(check: Check): JudgedCheck {
  let ours: number | string;
  try {
    ours = check.ours();
  } catch (error) {
    return { check, ours: String(error), passed: false };
  }
  const met = meets(check.expected, ours);
  if (check.kind !== 'knownMiss') return { check, ours, passed: met };
  return { check, ours, passed: !met && meets({ kind: 'near', ...check.recorded }, ours) };
}
