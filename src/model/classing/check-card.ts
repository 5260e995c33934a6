import { decisionTable } from '../decisions.ts';
import type { Checked, Problem } from '../problem.ts';
import type { ClassCard } from './class-card.ts';

/** What a typed class card may hold. Wider than any cotton sold, so that only slips are refused. */
export const cardLimits = {
  lengthIn: { low: 0.5, high: 1.8, unit: 'in' },
  uniformityPercent: { low: 70, high: 92, unit: '%' },
  strengthGPerTex: { low: 15, high: 55, unit: 'g/tex' },
  micronaire: { low: 2, high: 7, unit: 'micronaire' },
  reflectanceRd: { low: 40, high: 90, unit: 'Rd' },
  yellownessB: { low: 4, high: 20, unit: '+b' },
  leaf: { low: 1, high: 8, unit: 'leaf grade' },
  netLb: { low: 200, high: 700, unit: 'lb' },
} as const;

/** Pima's leaf grades end one earlier: 7 is below leaf grade. */
const belowPimaLeaf = 7;

/** A card whose leaf is a grade, as it is typed. */
export type TypedCard = Omit<ClassCard, 'leaf' | 'extraneous'> & { readonly leaf: number };

/** Checks a typed card: every number inside its limits, leaf a whole grade, kind and market known. */
export function checkCard(card: TypedCard): Checked<TypedCard> {
  const problems: Problem[] = [];
  for (const field of Object.keys(cardLimits) as (keyof typeof cardLimits)[]) {
    const { low, unit } = cardLimits[field];
    const high = field === 'leaf' && card.kind === 'pima' ? belowPimaLeaf : cardLimits[field].high;
    const value = card[field];
    if (!(value >= low && value <= high) || (field === 'leaf' && !Number.isInteger(value))) {
      problems.push({
        field,
        value: String(value),
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
