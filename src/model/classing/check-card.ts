import { decisionTable } from '../decisions.ts';
import type { Checked, Problem } from '../problem.ts';
import { cardLimitTable, pimaLeafGrades } from './card-limit-facts.ts';
import type { ClassCard } from './class-card.ts';

/** What a typed class card may hold. Wider than any cotton sold, so that only slips are refused. */
export const cardLimits = cardLimitTable.limits;

/** A card whose leaf is a grade, as it is typed. */
export type TypedCard = Omit<ClassCard, 'leaf' | 'extraneous'> & { readonly leaf: number };

/** Checks a typed card: every number inside its limits, leaf a whole grade, kind and market known. */
export function checkCard(card: TypedCard): Checked<TypedCard> {
  const problems: Problem[] = [];
  for (const field of Object.keys(cardLimits) as (keyof typeof cardLimits)[]) {
    const { low, unit } = cardLimits[field];
    const high = field === 'leaf' && card.kind === 'pima' ? pimaLeafGrades.below : cardLimits[field].high;
    // Moisture alone may be left out; anything else that is missing is no number.
    if (field === 'moisturePercent' && card[field] === undefined) continue;
    const value = Number(card[field]);
    if (!(value >= low && value <= high) || (field === 'leaf' && !Number.isInteger(value))) {
      problems.push({
        field,
        value: String(card[field]),
        rule: { kind: 'range', low, high, step: field === 'leaf' ? 1 : null, unit },
      });
    }
  }
  const choices = { kind: ['upland', 'pima'], market: decisionTable.classing.market.options } as const;
  for (const field of ['kind', 'market'] as const) {
    const options: readonly string[] = choices[field];
    if (!options.includes(card[field])) problems.push({ field, value: card[field], rule: { kind: 'choice', options } });
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: card };
}
