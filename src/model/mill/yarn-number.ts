import type { Checked, Rule } from '../problem.ts';
import { asNe, asNm, asTex, DENIER_PER_TEX, neFromTex, nmFromTex, type Tex, texFromNe, texFromNm } from '../units.ts';
import { yarnNumberFacts } from './yarn-number-facts.ts';

/** A yarn's number: the single, and how many singles are plied. */
export interface YarnNumber {
  readonly singleTex: Tex;
  /** Singles plied together; 1 for a single yarn. */
  readonly singles: number;
  /** Count of the whole yarn, tex; take-up in plying is left out. */
  readonly resultantTex: Tex;
}

/** Finest and coarsest single the parser accepts, tex. */
const singleTexLimits = {
  low: yarnNumberFacts.finestSingleTex.value,
  high: yarnNumberFacts.coarsestSingleTex.value,
};
const mostSingles = yarnNumberFacts.mostSingles.value;
const form = /^(ne|nm|tex)?\s*(\d+(?:\.\d+)?)\s*(?:([/x])\s*(\d+))?\s*(ne|nm|tex|s)?$/i;

/**
 * Reads a yarn number: '30Ne', '30s', '30' (Ne), '40/2Ne', '19.7tex', '20x2tex', '50Nm', '50/2Nm'.
 * Indirect counts divide by the plies, tex multiplies (Coats Bulletin 05), so tex takes 'x' and the others '/'.
 * @param text what was typed
 * @param field the name of the field, for the problem
 * @returns the number in tex, or a problem: not a yarn number, or out of 2 to 1000 tex a single or 12 plies
 */
export function parseYarnNumber(text: string, field = 'yarn'): Checked<YarnNumber> {
  const fail = (rule: Rule): Checked<YarnNumber> => ({
    ok: false,
    problems: [{ field, value: text, rule }],
  });
  const match = form.exec(text.trim());
  const expected = { kind: 'type', expected: 'a yarn number such as 30Ne, 40/2Ne, 19.7tex, 20x2tex or 50Nm' } as const;
  if (!match) return fail(expected);
  const [, before, digits, mark, plies, after] = match;
  if (before !== undefined && after !== undefined) return fail(expected);
  const system = (before ?? after ?? 'ne').toLowerCase();
  if (mark !== undefined && (mark === 'x') !== (system === 'tex')) return fail(expected);
  const value = Number(digits);
  const singles = plies === undefined ? 1 : Number(plies);
  if (!(singles >= 1 && singles <= mostSingles))
    return fail({ kind: 'range', low: 1, high: mostSingles, step: 1, unit: 'plies' });
  const singleTex = system === 'tex' ? asTex(value) : system === 'nm' ? texFromNm(asNm(value)) : texFromNe(asNe(value));
  const { low, high } = singleTexLimits;
  if (!(singleTex >= low && singleTex <= high))
    return fail({ kind: 'range', low, high, step: null, unit: 'tex a single' });
  return { ok: true, value: { singleTex, singles, resultantTex: asTex(singleTex * singles) } };
}

/** One linear density in every numbering a label may carry. */
export interface YarnNumbers {
  readonly tex: number;
  readonly ne: number;
  readonly nm: number;
  readonly denier: number;
  /** Sewing-thread ticket, metric: 3 x resultant Nm. */
  readonly metricTicket: number;
}

/** Writes a linear density in each numbering; denier is grams in 9000 m, the ticket 3000 / tex. */
export const yarnNumbers = (tex: Tex): YarnNumbers => ({
  tex,
  ne: neFromTex(tex),
  nm: nmFromTex(tex),
  denier: tex * DENIER_PER_TEX,
  metricTicket: nmFromTex(tex) * yarnNumberFacts.ticketPerNm.value,
});
