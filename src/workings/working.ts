import type { Practice } from '../checks/practice.ts';
import type { Fact } from '../model/fact.ts';
import type { CountName, DestinationAccount, SourceAccount } from '../model/ledger.ts';
import type { Part } from '../model/lot.ts';
import type { FibrePlace } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import type { FormulaId } from './formula-texts.ts';
import type { UnitKey } from './unit-key.ts';

/** How a page writes a number: each names one of its formats, which takes the model's unit. */
export type QuantityKind =
  | 'count'
  | 'number'
  | 'percent'
  | 'money'
  | 'day'
  | 'mass'
  | 'pounds'
  | 'smallMass'
  | 'fieldYield'
  | 'fibreLength'
  | 'length'
  | 'rain'
  | 'clothLength'
  | 'area'
  | 'clothArea'
  /** A length of the trade, as so many thirty-seconds of an inch. */
  | 'thirtySeconds'
  /** A difference between two percentages. */
  | 'points'
  | 'temperature'
  | 'heatUnits'
  | 'clothWeight'
  | 'threads'
  | 'yarnCount'
  | 'seeds'
  | 'seam'
  | 'density'
  | 'strength'
  | 'yarnStrength'
  | 'micronaire'
  | 'centsPerPound'
  | 'powerOfTen';

/** Lists of words that stand for a verdict or a grade on the page. */
export type WordList = 'moduleVerdicts' | 'spinVerdicts' | 'drapes' | 'fuzzes' | 'amounts';

/** One value as the page prints it: the model's value and the way it is written, never text in a language. */
export type Printed =
  | { readonly as: QuantityKind; readonly value: number; readonly decimals?: number }
  /** In a unit of its own, to about five figures, the same in both unit systems. */
  | { readonly as: 'exact'; readonly value: number; readonly unit: UnitKey }
  /** In the words in which practitioners say such a figure. */
  | { readonly as: 'told'; readonly unit: Practice['unit']; readonly value: number }
  /** Percent along and across. */
  | { readonly as: 'both'; readonly length: number; readonly width: number }
  | { readonly as: 'word'; readonly list: WordList; readonly word: string }
  /** A difference, with the sign of the way it goes. */
  | { readonly as: 'signed'; readonly kind: QuantityKind; readonly value: number; readonly decimals?: number }
  /** A code that is the same in every language, such as a color grade. */
  | { readonly as: 'text'; readonly text: string };

/** What a step or an input is called: a key of a list of words, never the words. */
export type Name =
  /** With the number it asks for, where it names a day or a bale. */
  | { readonly word: string; readonly n?: number }
  | { readonly account: SourceAccount | DestinationAccount | 'lot'; readonly side: 'in' | 'out' }
  | { readonly part: Part | 'water' }
  | { readonly machine: string }
  | { readonly count: CountName }
  | { readonly place: FibrePlace }
  | { readonly points: string }
  | { readonly paid: string }
  /** The month that a day of the year lies in. */
  | { readonly monthOf: number }
  | { readonly code: string }
  /** A name that the page has already put in words. */
  | { readonly label: string };

/** Where a value comes from. */
export type Origin =
  | { readonly at: 'ledger' | 'counts' | 'decision' | 'station'; readonly station: StationId }
  | {
      readonly at:
        | 'field'
        | 'weather'
        | 'farm'
        | 'fibre'
        | 'above'
        | 'definition'
        | 'rounding'
        | 'chance'
        | 'sale'
        | 'drawing'
        | 'ledgers'
        | 'run'
        | 'traceStep'
        | 'traceAsked'
        | 'bench'
        | 'chosen';
    }
  | { readonly at: 'machine'; readonly machine: string }
  | { readonly fact: Pick<Fact, 'source' | 'mark'> };

export interface Step {
  readonly name: Name;
  readonly value: Printed;
  readonly from: Origin;
  /** Which of two seasons it belongs to, as the page calls them; absent where there is one. */
  readonly of?: string;
}

/** An input of a formula: a step with the letter that stands for it. */
export interface Input extends Step {
  /** A letter, or a letter and an index after an underline: 'c_1'. */
  readonly symbol: string;
  readonly value: Extract<Printed, { as: 'exact' }>;
}

/** A number that a formula of its own gives first, and that goes into the last one under its letter. */
export interface Between extends Input {
  readonly formula: FormulaId;
}

/** A closed form: what goes in, and what the model made of it. */
export interface FormulaWorking {
  readonly kind: 'formula';
  /** What is worked out first, in its order. */
  readonly first: readonly Between[];
  readonly formula: FormulaId;
  readonly inputs: readonly Input[];
  /** The model's own value, in the formula's unit. */
  readonly exact: Extract<Printed, { as: 'exact' }>;
  readonly result: Printed;
}

/** A number that came out of many steps: the values on the way, as they were in this season. */
export interface ProcedureWorking {
  readonly kind: 'procedure';
  readonly steps: readonly Step[];
  readonly result: Printed;
}

export type Working = FormulaWorking | ProcedureWorking;
