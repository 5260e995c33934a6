import fc from 'fast-check';

/** Numbers by the letters that stand for them in a formula. */
export type Values = Readonly<Record<string, number>>;

/** A formula's letters at random, and the function of the model that computes the number which the formula explains. */
export interface FormulaModel {
  readonly inputs: fc.Arbitrary<Values>;
  readonly compute: (values: Values) => number;
}

/** Any number between two, in thousandths, so that a failing case shrinks to something readable. */
export const from = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);

/** A whole number between two. */
export const whole = (low: number, high: number): fc.Arbitrary<number> => fc.integer({ min: low, max: high });

/** The one value that a constant of the model has. */
export const always = (fact: { readonly value: number }): fc.Arbitrary<number> => fc.constant(fact.value);

/** One of the values that the model's constants have. */
export const oneOf = <Value>(values: readonly Value[]): fc.Arbitrary<Value> => fc.constantFrom(...values);

/** A value for each letter, drawn on its own. */
export const letters = (of: Readonly<Record<string, fc.Arbitrary<number>>>): fc.Arbitrary<Values> => fc.record(of);
