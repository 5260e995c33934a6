/** How far a number can be trusted. Memory and assumption are shown as such wherever the number is shown. */
export type Mark = 'published' | 'derived' | 'memory' | 'common practice' | 'assumption';

/** One constant of the model: a number that came from somewhere. */
export interface Fact {
  /** The value the model uses. */
  readonly value: number;
  /** Unit in words or symbols; 'fraction' for a share of one, 'ratio' for a pure number. */
  readonly unit: string;
  /** Smallest and largest value that the source, or good sense, allows. Absent for exact definitions. */
  readonly range?: readonly [low: number, high: number];
  /** Where it was read, or how it was reached. */
  readonly source: string;
  readonly mark: Mark;
  /** What the number is, where the name does not say it, or which other value a source gives. */
  readonly note?: string;
}

/** A table of constants that stand or fall together, such as a grade chart. */
export interface FactTable<Row> {
  readonly rows: readonly Row[];
  readonly unit: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note?: string;
}

/** Facts by name. Each link of the chain keeps one of these in its facts.ts. */
export type Facts = Readonly<Record<string, Fact>>;
