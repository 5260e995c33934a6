import { summariseGin } from '../model/gin/byproducts.ts';
import type { Season } from '../model/season.ts';

/** What is asked of a season here. A season without a bale has a yield and a value of nought, and no more to tell. */
export interface Outcomes {
  /** Lint in the bales, lb net an acre. */
  readonly lintLbPerAcre: number;
  /** Lint in the bales, per cent of the seed cotton that came to the gin. */
  readonly turnoutPercent: number | null;
  /** Mean staple of the bales, thirty-seconds of an inch. */
  readonly staple32nds: number | null;
  /** Mean value of a bale's lint, USD. */
  readonly usdPerBale: number | null;
  /** Value of the lint, USD an acre. */
  readonly usdPerAcre: number;
}

export type OutcomeName = keyof Outcomes;
export const outcomeNames = [
  'lintLbPerAcre',
  'turnoutPercent',
  'staple32nds',
  'usdPerBale',
  'usdPerAcre',
] as const satisfies readonly OutcomeName[];

/** Reads the outcomes off a season. */
export function outcomesOf({ scenario, cleaning, ginning, pressing, classing }: Season): Outcomes {
  const bales = classing?.classed ?? [];
  if (!cleaning || !ginning || !pressing || bales.length === 0)
    return { lintLbPerAcre: 0, turnoutPercent: null, staple32nds: null, usdPerBale: null, usdPerAcre: 0 };
  const sum = (read: (bale: (typeof bales)[number]) => number) => bales.reduce((all, bale) => all + read(bale), 0);
  const usd = sum(({ valueUsd }) => valueUsd);
  return {
    lintLbPerAcre: sum(({ netLb }) => netLb) / scenario.acres,
    turnoutPercent: 100 * summariseGin(cleaning.ledger, ginning.ledger, pressing.ledger).turnout,
    staple32nds: sum(({ staple32nds }) => staple32nds) / bales.length,
    usdPerBale: usd / bales.length,
    usdPerAcre: usd / scenario.acres,
  };
}
