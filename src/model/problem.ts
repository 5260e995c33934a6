import { problemFacts } from './problem-facts.ts';

/** What is allowed where a value was not: the words are made in the reader's language, from this. */
export type Rule =
  | {
      readonly kind: 'range';
      readonly low: number;
      readonly high: number;
      readonly step: number | null;
      readonly unit: string;
    }
  | { readonly kind: 'choice'; readonly options: readonly string[] }
  | { readonly kind: 'type'; readonly expected: string };

/** One thing wrong with an input: the field, what stood there, and what is allowed. */
export interface Problem {
  /** Path of the field, for example decisions.planting.rowInches, or a column and line. */
  readonly field: string;
  readonly value: string;
  readonly rule: Rule;
}

/** A result that may be a list of problems instead. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T; readonly notes?: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Longest piece of an input that is repeated in a message. */
const longestPiece = problemFacts.longestPiece.value;

/** A piece of someone's input made fit for one line: no control characters, not endless. */
export function onOneLine(text: string): string {
  // Two code units a sign at the most, so that no sign is cut in half.
  const flat = [...text.slice(0, 2 * longestPiece)]
    .map((sign) => (sign < ' ' || sign === '\u007f' ? ' ' : sign))
    .join('');
  return flat.length > longestPiece ? `${flat.slice(0, longestPiece - 1)}…` : flat;
}

/** A problem as one English line, for standard error. */
export function problemLine({ field, value, rule }: Problem): string {
  const allowed =
    rule.kind === 'range'
      ? `${rule.low} to ${rule.high}${rule.unit ? ` ${rule.unit}` : ''}${rule.step ? `, in steps of ${rule.step}` : ''}`
      : rule.kind === 'choice'
        ? rule.options.join(', ')
        : rule.expected;
  return `${onOneLine(field)}: ${onOneLine(value)} is not allowed; allowed: ${allowed}`;
}
