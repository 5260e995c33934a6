/**
 * What a check proves. Only 'exact', 'calibrated' and 'notTuned' count as outside checks; the others are listed apart.
 * - definition: the source defines the very thing the function computes, so that it could hardly differ.
 * - plainSum: arithmetic on numbers of the same source.
 * - exact: a worked example or standard that the model must hit within its rounding.
 * - calibrated: a published figure that a constant of the model was fitted to.
 * - notTuned: a published figure that nothing was fitted to.
 * - knownMiss: the model misses the published figure; the miss is recorded, so that any change of it is noticed.
 */
export type CheckKind = 'definition' | 'plainSum' | 'exact' | 'calibrated' | 'notTuned' | 'knownMiss';

export type CheckLink = 'units' | 'field' | 'gin' | 'length' | 'classing' | 'mill' | 'cloth' | 'trace' | 'season';

/** What the source says: a number with its tolerance, a band, or a word such as a grade. */
export type Expected =
  | { readonly kind: 'near'; readonly value: number; readonly tolerance: number }
  | { readonly kind: 'between'; readonly low: number; readonly high: number }
  | { readonly kind: 'is'; readonly word: string };

/** A general tool outside the project that gives the expected number. */
export type OutsideTool =
  | { readonly name: 'units'; readonly from: string; readonly to: string }
  | { readonly name: 'psychrolib'; readonly call: string; readonly args: readonly number[] }
  | { readonly name: 'simple-statistics'; readonly call: string };

interface Common {
  /** A name that stays, unique over all checks: 'G5', 'units/lb-kg'. */
  readonly id: string;
  readonly link: CheckLink;
  /** What is checked, with its input, in one English sentence or less. */
  readonly what: string;
  /** Where the expected figure was read. */
  readonly source: string;
  /** Unit of the figure, 'ratio' or 'index' where it is a pure number; empty for words. */
  readonly unit: string;
  readonly expected: Expected;
  readonly tool?: OutsideTool;
  /** The model's figure, from a function that the product itself uses. */
  readonly ours: () => number | string;
}

/** One check against something outside the project. */
export type Check =
  | (Common & { readonly kind: Exclude<CheckKind, 'knownMiss'> })
  | (Common & {
      readonly kind: 'knownMiss';
      /** The model's figure as recorded: the miss is asserted, not forgiven. */
      readonly recorded: { readonly value: number; readonly tolerance: number };
      /** Why the model misses. */
      readonly reason: string;
    });
