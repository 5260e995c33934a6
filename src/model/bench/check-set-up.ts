import { cardLimitTable, pimaLeafGrades } from '../classing/card-limit-facts.ts';
import { benchLimitTable } from '../mill/bench-limit-facts.ts';
import type { Problem } from '../problem.ts';
import type { FibreCard } from './set-up.ts';

const { lengthIn, uniformityPercent, strengthGPerTex, micronaire, reflectanceRd, yellownessB, leaf, netLb } =
  cardLimitTable.limits;

/** What the numbers of a class card at the bench may be. */
export const fibreLimits = {
  lengthIn,
  uniformityPercent,
  strengthGPerTex,
  micronaire,
  reflectanceRd,
  yellownessB,
  leaf,
  trashAreaPercent: benchLimitTable.limits.trashAreaPercent,
} as const;
export type FibreNumber = keyof typeof fibreLimits;
export const baleLimits = { ...fibreLimits, netLb } as const;

/** What the other numbers of a bench may be. */
export const { trashAreaPercent: _trash, ...setUpLimits } = benchLimitTable.limits;
export type SetUpNumber = keyof typeof setUpLimits;

/** A number inside its limits, or what is wrong with it. @param text as it was typed */
export function numberWithin(
  field: string,
  text: string,
  { low, high, unit }: { readonly low: number; readonly high: number; readonly unit: string },
  isWhole = false,
): { readonly value: number } | { readonly problem: Problem } {
  const value = Number(text.trim().replace(',', '.'));
  const fits = text.trim() !== '' && value >= low && value <= high && (!isWhole || Number.isInteger(value));
  if (fits) return { value };
  return { problem: { field, value: text, rule: { kind: 'range', low, high, step: isWhole ? 1 : null, unit } } };
}

/** The limits of a card's number; Pima's leaf grades end one earlier than upland's. */
export const limitsOf = (field: FibreNumber, kind: FibreCard['kind']) =>
  field === 'leaf' && kind === 'pima' ? { ...fibreLimits.leaf, high: pimaLeafGrades.below } : fibreLimits[field];
