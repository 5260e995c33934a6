import type { Masses } from '../flow/flow-input.ts';

export type LintCleanerKind = 'saw' | 'roller' | 'air';

/** A share of the work, 0 to 1, as the amount that has come by then: with its unit, all of it as in the ledger. */
export type Amount = (share: number) => string;

/** A mass that enters or leaves, with its words. */
export interface NamedMass {
  readonly masses: Masses;
  readonly name: string;
  readonly amount: Amount;
}

/** A lint cleaner, and what goes on from it. */
export interface CleanerInput {
  readonly id: string;
  readonly thrownOut: Masses;
}

/** One bale's worth of seed cotton at the gin stand. Words are already translated. */
export interface GinningInput {
  readonly stand: 'saw' | 'roller';
  readonly lintCleaner: LintCleanerKind;
  readonly cleaners: readonly CleanerInput[];
  readonly seedCotton: NamedMass;
  /** Water put back before the stand; null where none is. */
  readonly water: NamedMass | null;
  readonly seed: NamedMass;
  readonly trash: NamedMass;
  /** What lint cleaners threw out; null where there are none. */
  readonly motes: NamedMass | null;
  readonly lint: NamedMass;
  /** Lint as it leaves the stand. */
  readonly lintAtStand: Masses;
  /** One pound or one kilogram, kg. */
  readonly unitKg: number;
  readonly size: { readonly width: number; readonly height: number };
  /** True turns a minute, and how many times slower they are drawn. */
  readonly turning: Readonly<Record<'saws' | 'brush' | 'roller' | 'rotaryKnife' | 'lintCleaner', number>> & {
    readonly slowedBy: number;
  };
  readonly labels: GinningLabels;
}

/** What a tuft or seed, and a bit of trash, stand for. */
type PieceMasses = { readonly tuftKg: number; readonly bitKg: number };

export interface GinningLabels {
  readonly saw: string;
  readonly ribs: string;
  readonly brush: string;
  readonly seedRoll: string;
  readonly roller: string;
  readonly fixedKnife: string;
  readonly rotaryKnife: string;
  readonly cleaners: string;
  /** Under the view from the front. */
  readonly front: string;
  readonly handGin: string;
  /** The same and the lint's name in a few letters, for a small picture. */
  readonly handGinShort: string;
  readonly lintShort: string;
  /** What each turning part shows: its quantity and rate. */
  readonly shows: Readonly<Record<'saws' | 'brush' | 'roller' | 'rotaryKnife' | 'lintCleaner', string>>;
  readonly caption: (pieces: PieceMasses) => string;
  readonly captionShort: (pieces: PieceMasses) => string;
}
