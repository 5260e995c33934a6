import { roundingFacts } from '../rounding-facts.ts';
import { dampFacts } from './damp-facts.ts';

/** A hair over a limit is rounding: lint brought to exactly the limit is not too damp. */
const exceeds = (moisturePercent: number, limitPercent: number): boolean =>
  moisturePercent > limitPercent * (1 + roundingFacts.hair.value);

/** Whether a bale is damper than the trade accepts. Moisture in percent wet basis. */
export const overMoistureLimit = (moisturePercent: number): boolean =>
  exceeds(moisturePercent, dampFacts.refusedAbovePercent.value);

/** Whether a crop of this year met a limit of moisture at all. */
const limited = (year: number): boolean => year >= dampFacts.limitSinceYear.value;

/** Whether a bale is so damp that it changes colour in store. Moisture in percent wet basis. */
export const colourAtRisk = (moisturePercent: number): boolean =>
  exceeds(moisturePercent, dampFacts.colourAbovePercent.value);

/** What a bale's water does to its price. */
export interface PaidWeight {
  /** Pounds that are paid: the net weight, less the water above the limit. */
  readonly paidLb: number;
  /**
   * 'waterDeducted': paid as if dried to the limit. 'refusedForLoan': the loan takes no such bale, and the value is what it
   * would fetch once it has dried to the limit.
   */
  readonly waterRule: 'none' | 'waterDeducted' | 'refusedForLoan';
}

/**
 * The weight a bale is paid on. Water above the limit is worth nothing: the same dry lint fetches the same.
 * @param netLb pounds on the scale
 * @param moisturePercent percent wet basis; null where it was not measured, and then nothing is taken off
 * @param underLoan whether the price is a loan rate
 * @param year of the price: before there was a limit, a bale was paid as it weighed
 */
export function paidWeight(
  netLb: number,
  moisturePercent: number | null,
  underLoan: boolean,
  year: number,
): PaidWeight {
  if (moisturePercent === null || !limited(year) || !overMoistureLimit(moisturePercent)) {
    return { paidLb: netLb, waterRule: 'none' };
  }
  const paidLb = (netLb * (100 - moisturePercent)) / (100 - dampFacts.paidAtPercent.value);
  return { paidLb, waterRule: underLoan ? 'refusedForLoan' : 'waterDeducted' };
}
