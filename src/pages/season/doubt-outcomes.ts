import type { OutcomeName } from '../../doubt/outcomes.ts';
import type { Words } from '../../language/words.ts';
import type { DoubtWords } from './doubt-words.ts';

/** How an outcome is written. */
export interface OutcomeWriting {
  readonly name: string;
  /** The unit for a head; empty where the number carries its sign. */
  readonly unit: string;
  /** The number alone, for a place whose head holds the unit. */
  readonly short: (value: number) => string;
  /** A difference with its sign. */
  readonly change: (difference: number) => string;
}

/** How each outcome is written, in the reader's units. */
export function outcomeWriting({ formats }: Words, words: DoubtWords): Readonly<Record<OutcomeName, OutcomeWriting>> {
  const writing = (outcome: OutcomeName, unit: string, short: (value: number) => string): OutcomeWriting => ({
    name: words.outcomes[outcome],
    unit,
    short,
    change: (difference) => {
      const text = short(difference);
      return difference > 0 && /[1-9]/.test(text) ? `+${text}` : text;
    },
  });
  return {
    lintLbPerAcre: writing('lintLbPerAcre', formats.fieldYield(0).unit, (value) => formats.fieldYield(value).number),
    turnoutPercent: writing('turnoutPercent', '', (value) => formats.percent(value)),
    staple32nds: writing('staple32nds', words.thirtySeconds, (value) => formats.number(value, 1)),
    usdPerBale: writing('usdPerBale', '', (value) => formats.money(value, 0)),
    usdPerAcre: writing('usdPerAcre', '', (value) => formats.money(value, 0)),
  };
}
