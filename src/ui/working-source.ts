/** One step or input of a working, in words and units. */
export interface WorkingLine {
  readonly symbol?: string;
  readonly name: string;
  readonly value: string;
  readonly from: string;
  /** Where it was read, as the source is called in print, whatever the reader's language. */
  readonly source?: string;
}

/** A formula to look at: MathML made when the app was built. */
export interface FormulaLine {
  /** The letter that its number has in a later formula. */
  readonly symbol?: string;
  readonly shown: string;
  /** The same with the numbers of this season. */
  readonly filled: string;
  /** What it gives. */
  readonly exact: string;
}

/** A working in words: a formula and what goes in, or steps; and what comes out. */
export interface WorkingText {
  /** Null for a number that many steps lead to. */
  readonly formula: null | {
    readonly lines: readonly FormulaLine[];
    readonly headings: { readonly shown: string; readonly filled: string };
    /** What the signs in it mean, where not everybody knows them. */
    readonly notes: readonly string[];
  };
  readonly lines: readonly WorkingLine[];
  readonly result: string;
  readonly headings: {
    readonly lines: string;
    readonly step: string;
    readonly value: string;
    readonly result: string;
  };
}

/** What a number needs to open its working. */
export interface WorkingSource {
  /** One for each number on the page. */
  readonly key: string;
  /** What the number is called. */
  readonly name: string;
  /** What it was computed from: when this changes, an open working is worked out again. */
  readonly on: unknown;
  readonly load: () => Promise<WorkingText | null>;
}
