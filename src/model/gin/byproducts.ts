import type { MassEntry, MassLedger } from '../ledger.ts';
import { totalDryKg } from '../lot.ts';
import { POUNDS_PER_STATISTICAL_BALE } from '../units.ts';
import { pressFacts } from './press-facts.ts';

const poundsPerTradeBale = pressFacts.tradeBaleLb.value;

/** What the gin made of the seed cotton, per bale. */
export interface GinSummary {
  /** Lint pressed over seed cotton delivered, fraction. */
  readonly turnout: number;
  readonly seedCottonLbPer480LbBale: number;
  readonly seedLbPer480LbBale: number;
  readonly seedLbPer500LbBale: number;
  /** Gin trash and lint-cleaner waste (motes) together. */
  readonly wasteLbPer480LbBale: number;
  readonly wasteLbPer500LbBale: number;
  readonly lintCleanerWasteLbPer500LbBale: number;
}

const entryKg = ({ dryKg, waterKg }: MassEntry): number => totalDryKg(dryKg) + waterKg;
const sumKg = (entries: readonly MassEntry[], account: string): number =>
  entries.reduce((sum, entry) => (entry.account === account ? sum + entryKg(entry) : sum), 0);

/**
 * Sums up a gin run from the ledgers of its three stations.
 * @throws RangeError when nothing was pressed
 */
export function summariseGin(
  cleaning: Pick<MassLedger, 'in' | 'out'>,
  ginning: Pick<MassLedger, 'in' | 'out'>,
  pressing: Pick<MassLedger, 'in' | 'out'>,
): GinSummary {
  const seedCotton = sumKg(cleaning.in, 'lot');
  const pressed = sumKg(pressing.out, 'lot');
  if (!(pressed > 0)) throw new RangeError('no lint was pressed');
  const seed = sumKg(ginning.out, 'seedHouse');
  const motes = sumKg(ginning.out, 'lintCleanerWaste');
  const waste = sumKg(cleaning.out, 'ginTrash') + sumKg(ginning.out, 'ginTrash') + motes;
  const per = (kg: number, pounds: number) => (kg / pressed) * pounds;
  return {
    turnout: pressed / seedCotton,
    seedCottonLbPer480LbBale: per(seedCotton, POUNDS_PER_STATISTICAL_BALE),
    seedLbPer480LbBale: per(seed, POUNDS_PER_STATISTICAL_BALE),
    seedLbPer500LbBale: per(seed, poundsPerTradeBale),
    wasteLbPer480LbBale: per(waste, POUNDS_PER_STATISTICAL_BALE),
    wasteLbPer500LbBale: per(waste, poundsPerTradeBale),
    lintCleanerWasteLbPer500LbBale: per(motes, poundsPerTradeBale),
  };
}
